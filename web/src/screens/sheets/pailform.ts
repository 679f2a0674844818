// A machine's bucket while it is typed: inside measures, or two fills. Kept on this phone for printing.
import { signal, type Signal } from "@preact/signals";
import type { PailShapeTyped, Typed, Units } from "../../core/messages";
import { readDraft, writeDraft } from "../../store/underway/drafts";

export type PailKind = PailShapeTyped["kind"];

interface PailTexts {
  readonly floor: string;
  readonly brim: string;
  readonly height: string;
  readonly lowDepth: string;
  readonly lowVolume: string;
  readonly highDepth: string;
  readonly highVolume: string;
}

export interface PailForm extends PailTexts {
  readonly kind: PailKind;
  /** The units that stood beside the digits; with others they would mean another bucket. */
  readonly stick: Units["stick"];
  readonly pail: Units["pail"];
  /** Unusual numbers that the person has looked at again and kept. */
  readonly kept: readonly string[];
}

const EMPTY: PailTexts = {
  floor: "",
  brim: "",
  height: "",
  lowDepth: "",
  lowVolume: "",
  highDepth: "",
  highVolume: "",
};

function emptyForm({ stick, pail }: Units): PailForm {
  return { ...EMPTY, kind: "diameters", stick, pail, kept: [] };
}

function isPailForm(value: unknown): value is PailForm {
  if (value === null || typeof value !== "object") return false;
  const draft = value as Partial<Record<keyof PailForm, unknown>>;
  const texts = Object.keys(EMPTY).every(
    (name) => typeof draft[name as keyof PailForm] === "string",
  );
  const isKind = draft.kind === "diameters" || draft.kind === "fills";
  return texts && isKind && Array.isArray(draft.kept);
}

const open = new Map<string, Signal<PailForm | null>>();

function stored(machine: string): Signal<PailForm | null> {
  const known = open.get(machine);
  if (known !== undefined) return known;
  const draft = readDraft(`print.pail.${machine}`);
  const fresh = signal<PailForm | null>(isPailForm(draft) ? draft : null);
  open.set(machine, fresh);
  return fresh;
}

export function pailFormOf(machine: string, units: Units): PailForm {
  const form = stored(machine).value;
  const isSame = form !== null && form.stick === units.stick && form.pail === units.pail;
  return isSame ? form : emptyForm(units);
}

export function changePail(machine: string, form: PailForm): void {
  stored(machine).value = form;
  writeDraft(`print.pail.${machine}`, form);
}

export function pailShape(form: PailForm): PailShapeTyped {
  const depth = (text: string): Typed => ({ text, unit: form.stick });
  const volume = (text: string): Typed => ({ text, unit: form.pail });
  if (form.kind === "diameters")
    return {
      kind: "diameters",
      floor_diameter: depth(form.floor),
      brim_diameter: depth(form.brim),
      height: depth(form.height),
    };
  return {
    kind: "fills",
    fills: [
      { depth: depth(form.lowDepth), volume: volume(form.lowVolume) },
      { depth: depth(form.highDepth), volume: volume(form.highVolume) },
    ],
  };
}

export function isWholePail(form: PailForm): boolean {
  const { floor, brim, height, lowDepth, lowVolume, highDepth, highVolume } = form;
  const asked =
    form.kind === "diameters"
      ? [floor, brim, height]
      : [lowDepth, lowVolume, highDepth, highVolume];
  return asked.every((text) => text.trim() !== "");
}
