// Thresholds of the shop for look and smell, an entry of the log. The published figure and its source
// stand beside each.
import { useState } from "preact/hooks";
import type { DeskError, Unit } from "../../core/messages";
import { Fault } from "../../elements/fault";
import { TextField } from "../../elements/fields/textfield";
import { opened } from "../../store/log/journal";
import { ownLimits, type LookLimits } from "../../store/written/shop";
import { errorSentence } from "../../words/errors";
import { writeDecimal } from "../../words/numbers";
import { say } from "../../words/say";
import { useCore } from "../core";
import { FactPage, useFact } from "./fact";

const NUMBERS = [
  { part: "ph_low", unit: "1" },
  { part: "ph_high", unit: "1" },
  { part: "ph_drop", unit: "1" },
  { part: "ph_drop_far", unit: "1" },
  { part: "nitrite_most", unit: "mg/L" },
  { part: "cold", unit: "°C" },
  { part: "warm", unit: "°C" },
] as const;
const SLIDE = ["review", "act"] as const;
/** The published bands, counts per mL, for the hints beside them. */
const FIGURES: Readonly<Record<string, number>> = { review: 1e3, act: 1e6 };
const COUNTS: Unit = "CFU/mL";

type Form = Readonly<Record<string, string>>;

function formOf(limits: LookLimits | null): Form {
  const slide = limits?.dip_slide;
  return {
    ...Object.fromEntries(NUMBERS.map(({ part }) => [part, limits?.[part]?.text ?? ""])),
    scheme: slide?.scheme ?? "",
    review: slide?.review.text ?? "",
    act: slide?.act.text ?? "",
  };
}

/** Null where the bands of the slide are half filled in. */
function limitsOf(form: Form): LookLimits | null {
  const text = (part: string): string => (form[part] ?? "").trim();
  const slide = [text("scheme"), text("review"), text("act")];
  const isGiven = slide.some((part) => part !== "");
  if (isGiven && slide.includes("")) return null;
  const given = NUMBERS.filter(({ part }) => text(part) !== "");
  const typed = (part: string): { text: string; unit: Unit } => ({
    text: text(part),
    unit: COUNTS,
  });
  return {
    ...Object.fromEntries(given.map(({ part, unit }) => [part, { text: text(part), unit }])),
    ...(isGiven
      ? { dip_slide: { scheme: text("scheme"), review: typed("review"), act: typed("act") } }
      : {}),
  };
}

function figureOf(part: string): { readonly figure?: string } {
  const figure = FIGURES[part];
  return figure === undefined ? {} : { figure: writeDecimal(figure, 0, 0) };
}

function Fields({
  form,
  error,
  onText,
}: {
  readonly form: Form;
  readonly error: DeskError | null;
  readonly onText: (part: string, text: string) => void;
}) {
  const field = (part: (typeof NUMBERS)[number]["part"] | "scheme" | "review" | "act") => ({
    id: part,
    label: say(`limits.${part}`),
    hint: say(`limits.${part}_hint`, figureOf(part)),
    text: form[part] ?? "",
    fault:
      error?.path.endsWith(`.${part}`) === true
        ? errorSentence(error, say("field.limit"))
        : undefined,
    onText: (text: string): void => {
      onText(part, text);
    },
  });
  return (
    <>
      {NUMBERS.map(({ part, unit }) => (
        <TextField key={part} {...field(part)} unit={unit} />
      ))}
      <TextField {...field("scheme")} number={false} />
      {SLIDE.map((part) => (
        <TextField key={part} {...field(part)} unit={COUNTS} />
      ))}
    </>
  );
}

function LimitsForm() {
  const core = useCore();
  const { saving, store } = useFact();
  const [form, setForm] = useState<Form>(() => formOf(ownLimits.value));
  const [error, setError] = useState<DeskError | null>(null);
  const [isHalf, setHalf] = useState(false);
  const press = async (): Promise<void> => {
    const limits = limitsOf(form);
    setHalf(limits === null);
    if (limits === null) return;
    const answer = await core.ask("judge_look", { seen: [], limits });
    setError(answer.kind === "error" ? answer.error : null);
    if (answer.kind === "ok") await store({ look_limits: limits });
  };
  return (
    <FactPage
      title={say("limits.title")}
      about={JSON.stringify(form)}
      saving={saving}
      onSave={() => void press()}
    >
      <p class="note">{say("limits.hint")}</p>
      {isHalf ? <Fault>{say("limits.slide_whole")}</Fault> : null}
      <Fields
        form={form}
        error={error}
        onText={(part, text) => {
          setForm({ ...form, [part]: text });
        }}
      />
    </FactPage>
  );
}

/** The form begins with what is stored, so it waits until the log is read. */
export function LimitsScreen() {
  return opened.value.kind === "ready" ? <LimitsForm /> : null;
}
