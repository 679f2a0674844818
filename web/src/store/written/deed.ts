// What was done after a check: the recipe that was begun, what really went in, and the second reading.
import type {
  AssessSumpResult,
  DipTyped,
  MachineTyped,
  PlanCheckBody,
  Typed,
} from "../../core/messages";
import type { Common } from "../log/entry";

export type RowKind = "mix" | "water" | "concentrate" | "own_fluid" | "ready_mix" | "unknown";

/** Buckets that are alike; amounts as text in the units of the tools, as the recipe showed them. */
export interface BucketRow {
  readonly count: number;
  readonly kind?: RowKind;
  readonly each?: Typed;
  readonly water?: Typed;
  readonly concentrate?: Typed;
  readonly strength?: Typed;
  readonly about?: boolean;
}

/** The recipe as it was begun. `check` names the entry that it stands in. */
export interface PlanContent extends Common {
  readonly kind: "plan";
  readonly body: {
    readonly check: string;
    readonly pours: readonly BucketRow[];
    readonly draw_off?: Typed;
  };
}

export interface PourContent extends Common {
  readonly kind: "pour";
  readonly body: {
    readonly plan: string;
    readonly pours: readonly BucketRow[];
    readonly finished: boolean;
    readonly draw_off?: Typed;
    readonly recheck_due_at?: string;
    readonly lot?: string;
    readonly looked_even?: boolean;
  };
}

export interface RecheckContent extends Common {
  readonly kind: "recheck";
  readonly body: {
    readonly machine: MachineTyped;
    readonly of: string;
    readonly reading?: PlanCheckBody["reading"];
    readonly dip?: DipTyped;
    readonly now?: string;
    readonly remarks?: string;
  };
  readonly shown: { readonly assessment: AssessSumpResult };
}

export type Deed = PlanContent | PourContent | RecheckContent;

type Fields = Readonly<Record<string, unknown>>;

/**
 * What every page that shows a deed needs of it. A pour without a plan and a second reading without its
 * assessment are told, not done along the recipe.
 */
export function isDeed(kind: unknown, body: object, shown: unknown): boolean {
  const { pours, check, finished, plan } = body as Fields;
  if (kind === "plan") return Array.isArray(pours) && typeof check === "string";
  if (kind === "pour")
    return Array.isArray(pours) && typeof finished === "boolean" && typeof plan === "string";
  const assessed = shown as Fields | undefined;
  return kind === "recheck" && typeof assessed?.["assessment"] === "object";
}
