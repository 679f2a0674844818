// What of an entry can be corrected: the raw fields as they were typed, each with its unit and its keys.
import type { BucketRow, ReadingTyped, Unit } from "../../core/messages";
import type { AnyEntry, CheckEntry, ToldEntry } from "../../store/log/entry";
import {
  readingUnit,
  dipUnit,
  warmthUnit,
  type Line,
  type Touched,
} from "../../store/underway/walk";
import {
  levelChangeWord,
  lineWord,
  shiftStateWord,
  stopReasonWord,
  toldWhatWord,
  touchedWord,
  waterWord,
} from "../../words/codes";
import { say, startLarge, type Key } from "../../words/say";
import { dipLabel, dipSteps, wayOf } from "../check/dip/level";
import { GAINED, LOST, WATERS } from "../check/since";
import { REASONS, STATES } from "../told/state";
import { WHATS } from "../told/others";
import { valueAt, type Content } from "./content";

export type FieldKind = "number" | "count" | "gauge" | "text" | "choice" | "looks";

export interface Field {
  /** Its place in the content, with points. */
  readonly name: string;
  readonly label: string;
  readonly kind: FieldKind;
  readonly unit: Unit;
  readonly options: readonly { readonly value: string; readonly word: string }[];
  /** Whether it may stay empty. */
  readonly isOptional: boolean;
  /** As pycore's table calls it, where the number is asked about by itself. */
  readonly quantity: string;
}

type More = Partial<Pick<Field, "unit" | "options" | "isOptional" | "quantity">>;

function field(name: string, label: string, kind: FieldKind, more: More = {}): Field {
  return { name, label, kind, unit: "1", options: [], isOptional: false, quantity: "", ...more };
}

function choice(
  name: string,
  label: string,
  values: readonly string[],
  word: (code: string) => string,
): Field {
  const options = values.map((value) => ({ value, word: startLarge(word(value)) }));
  return field(name, label, "choice", { options });
}

const TOUCHED: readonly Touched[] = ["hard_floor", "chips", "unsure"];
const LINES: readonly Line[] = ["digital", "optical", "optical_oily", "blurred"];

type Measured = Extract<AnyEntry, { kind: "check" | "recheck" }>;

function dipFields({ machine }: CheckEntry["body"]): readonly Field[] {
  const unit = dipUnit(machine);
  if (wayOf(machine) === "gauge") return [field("dip", dipLabel(machine), "gauge", { unit })];
  const steps = dipSteps(machine);
  return [
    field("dip.depth", dipLabel(machine), "number", { unit }),
    ...(steps.includes("clean_side")
      ? [field("dip.clean_side", say("answers.clean_side"), "number", { unit })]
      : []),
    ...(steps.includes("touched")
      ? [choice("dip.how", say("answers.touched"), TOUCHED, touchedWord)]
      : []),
  ];
}

function readingFields({ machine }: CheckEntry["body"], reading: ReadingTyped): readonly Field[] {
  const unit = readingUnit(machine);
  const again = (reading.again ?? []).map((_, i) =>
    field(`reading.again.${String(i)}`, say("amend.again", { n: String(i + 2) }), "number", {
      unit,
    }),
  );
  return [
    field("reading.shows", say("answers.reading"), "number", { unit }),
    ...again,
    ...(reading.temperature === undefined
      ? []
      : [
          field("reading.temperature", say("answers.warmth"), "number", {
            unit: reading.temperature.unit ?? warmthUnit(machine),
          }),
        ]),
    choice("reading.how", say("answers.line"), LINES, lineWord),
  ];
}

/** What held for one check; asked about only where it was answered. */
const ONCE: readonly (readonly [name: string, label: Key])[] = [
  ["second.shows", "answers.second"],
  ["aim", "answers.aim"],
  ["fill_to_depth", "answers.fill"],
  ["concentrate_at_hand", "answers.stock"],
  ["usual", "hold.usual"],
];

function unitAt(content: Content, name: string, otherwise: Unit = "1"): Unit {
  const typed = valueAt(content, name) as { unit?: Unit } | undefined;
  return typed?.unit ?? otherwise;
}

function onceFields(content: Content): readonly Field[] {
  return ONCE.filter(([name]) => valueAt(content, name) !== undefined).map(([name, label]) =>
    field(name, say(label), "number", { unit: unitAt(content, name) }),
  );
}

function saidFields(content: Content): readonly Field[] {
  return [
    ...(content["level_change"] === undefined
      ? []
      : [
          choice(
            "level_change",
            say("since.answer"),
            [...new Set([...LOST, ...GAINED])],
            levelChangeWord,
          ),
        ]),
    ...(content["topped_up_with"] === undefined
      ? []
      : [choice("topped_up_with", say("since.water_answer"), WATERS, waterWord)]),
  ];
}

function lookFields({ machine }: CheckEntry["body"], content: Content): readonly Field[] {
  const measured = (name: string, label: Key, quantity: string, unit: Unit): Field =>
    field(name, say(label), "number", { unit, quantity, isOptional: true });
  const warmth = unitAt(content, "temperature", warmthUnit(machine));
  return [
    field("look", say("compact.look"), "looks"),
    measured("ph", "look.ph", "ph", "1"),
    measured("nitrite", "look.nitrite", "nitrite_mg_l", "mg/L"),
    measured("dip_slide.germs", "look.germs", "dip_slide_cfu_ml", "CFU/mL"),
    measured("temperature", "look.warmth", "temperature_c", warmth),
    ...(content["first_fill_ph"] === undefined
      ? []
      : [measured("first_fill_ph", "look.first_ph_label", "first_fill_ph", "1")]),
  ];
}

function measuredFields(entry: Measured, content: Content): readonly Field[] {
  const body = entry.body as Partial<CheckEntry["body"]>;
  // A measurement that came from elsewhere without its set-up cannot be read again here.
  if (body.machine === undefined) return [];
  const known = body as CheckEntry["body"];
  const reading = content["reading"] as ReadingTyped | undefined;
  return [
    ...(content["dip"] === undefined ? [] : dipFields(known)),
    ...(reading === undefined ? [] : readingFields(known, reading)),
    ...onceFields(content),
    ...(entry.kind === "check" ? lookFields(known, content) : []),
    ...saidFields(content),
  ];
}

const EACH = [
  ["water", "amend.row_water", "bucket_water_l"],
  ["concentrate", "amend.row_concentrate", "bucket_concentrate_l"],
  ["each", "amend.row_each", "volume_l"],
  ["strength", "amend.row_strength", "strength_pct"],
] as const;

function rowFields(rows: readonly BucketRow[]): readonly Field[] {
  return rows.flatMap((row, i) => {
    const n = String(i + 1);
    const own = EACH.filter(([name]) => row[name] !== undefined);
    return [
      field(`pours.${String(i)}.count`, say("amend.row_count", { n }), "count", {
        quantity: "own_buckets",
        isOptional: true,
      }),
      ...own.map(([name, label, quantity]) =>
        field(`pours.${String(i)}.${name}`, say(label, { n }), "number", {
          unit: row[name]?.unit ?? "L",
          quantity,
        }),
      ),
    ];
  });
}

function pourFields(content: Content): readonly Field[] {
  const rows = (content["pours"] ?? []) as readonly BucketRow[];
  return [
    ...rowFields(rows),
    ...(content["draw_off"] === undefined
      ? []
      : [
          field("draw_off", say("amend.draw_off"), "number", {
            unit: unitAt(content, "draw_off", "L"),
            quantity: "volume_l",
          }),
        ]),
    ...(content["lot"] === undefined ? [] : [words("lot", "amend.lot")]),
  ];
}

function words(name: string, label: Key, isOptional = true): Field {
  return field(name, say(label), "text", { isOptional });
}

const REMARKS = (): Field => words("remarks", "told.remarks");

function cleanOutFields(content: Content): readonly Field[] {
  const numbers = [
    ["waste", "amend.waste", "volume_l"],
    ["rinse", "amend.rinse", "volume_l"],
    ["left", "amend.left", "volume_l"],
    ["left_strength", "amend.left_strength", "strength_pct"],
  ] as const;
  return [
    ...numbers
      .filter(([name]) => content[name] !== undefined)
      .map(([name, label, quantity]) =>
        field(name, say(label), "number", { unit: unitAt(content, name, "L"), quantity }),
      ),
    words("cleaner", "amend.cleaner"),
    words("waste_note", "amend.waste_note"),
  ];
}

function stateFields(): readonly Field[] {
  const why = choice("reason", say("tell.reason"), REASONS, stopReasonWord);
  return [
    choice("state", say("tell.state_now"), STATES, shiftStateWord),
    { ...why, isOptional: true },
    REMARKS(),
  ];
}

function toldFields(entry: ToldEntry, content: Content): readonly Field[] {
  switch (entry.kind) {
    case "note":
      return [words("text", "tell.note", false)];
    case "additive":
      return [
        words("name", "tell.name", false),
        ...(content["amount"] === undefined
          ? []
          : [field("amount", say("tell.amount"), "number", { unit: unitAt(content, "amount") })]),
        words("agreed_with", "told.agreed"),
        REMARKS(),
      ];
    case "unknown_addition":
      return [choice("what", say("tell.what_it_was"), WHATS, toldWhatWord), REMARKS()];
    case "machine_state":
      return stateFields();
    case "clean_out":
      return cleanOutFields(content);
    default:
      return [];
  }
}

/** In the order in which they are asked; none for what is set and not measured or told. */
export function fieldsOf(entry: AnyEntry, content: Content): readonly Field[] {
  if (entry.kind === "check" || entry.kind === "recheck") return measuredFields(entry, content);
  if (entry.kind === "pour") return pourFields(content);
  if (entry.kind === "machine" || entry.kind === "plan") return [];
  return toldFields(entry, content);
}

/** A set-up is changed by a new one, and a plan by what was poured. */
export function isRevocable({ kind }: AnyEntry): boolean {
  return kind !== "machine" && kind !== "plan";
}
