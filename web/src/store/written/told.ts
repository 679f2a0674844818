// What happens at a machine without a dip and a recipe: buckets by habit, what others poured, additives,
// notes, states. Stored as told; nothing is worked out from it here.
import type {
  AdditiveContent,
  CalibrationContent,
  CheckContent,
  CleanOutContent,
  MachineStateContent,
  NoteContent,
  PourContent,
  ShopSetContent,
  UnknownAdditionContent,
} from "../../core/messages";

export interface ToldBodies {
  readonly pour: PourContent;
  readonly recheck: CheckContent;
  readonly clean_out: CleanOutContent;
  readonly additive: AdditiveContent;
  readonly unknown_addition: UnknownAdditionContent;
  readonly machine_state: MachineStateContent;
  readonly shop_set: ShopSetContent;
  readonly note: NoteContent;
  readonly calibration: CalibrationContent;
}

export type ToldKind = keyof ToldBodies;

interface Told<K extends ToldKind> {
  readonly id: string;
  readonly kind: K;
  /** Empty for what is about the whole shop. */
  readonly machine: string;
  readonly measured_at: string;
  readonly wall: string;
  /** Initials suffice. */
  readonly by?: string;
  readonly versions: { readonly build: string; readonly pycore: string };
  readonly body: ToldBodies[K];
}

export type ToldContent = { readonly [K in ToldKind]: Told<K> }[ToldKind];

type Fields = Readonly<Record<string, unknown>>;

function areRows(rows: unknown): boolean {
  return (
    Array.isArray(rows) &&
    rows.every((row: unknown) => typeof (row as Fields | null)?.["count"] === "number")
  );
}

/** The least that a page draws of each kind; null for a kind that is not one of these. */
const DRAWABLE: Readonly<Record<ToldKind, (body: Fields) => boolean>> = {
  pour: ({ pours }) => areRows(pours),
  recheck: () => true,
  clean_out: ({ charge }) => charge === undefined || areRows(charge),
  additive: ({ name }) => typeof name === "string",
  unknown_addition: () => true,
  machine_state: ({ state }) => typeof state === "string",
  shop_set: () => true,
  note: ({ text }) => typeof text === "string",
  calibration: ({ of }) => typeof of === "string",
};

export function isToldKind(kind: unknown): kind is ToldKind {
  return typeof kind === "string" && Object.hasOwn(DRAWABLE, kind);
}

export function isToldDrawable(kind: ToldKind, body: Fields): boolean {
  return DRAWABLE[kind](body);
}

/** States in which a machine's checks rest; as pycore has them in its journal. */
const AT_REST: ReadonlySet<string> = new Set(["clean_out", "out_of_service", "shutdown"]);

export function isAtRest({ state }: MachineStateContent): boolean {
  return AT_REST.has(state);
}

/** Somebody has hung a tag on it or stopped it: nothing is poured in. Its checks do not rest. */
export function isHeld({ state }: MachineStateContent): boolean {
  return state === "on_hold" || state === "stopped";
}
