// What pycore says of corrected numbers: the question of the page on which they were first typed.
import type { Answer, Core } from "../../core/client";
import type {
  AssessSumpBody,
  CheckContent as CheckContentBody,
  DeskError,
  Doubt,
  JudgeLookBody,
  MachineTyped,
} from "../../core/messages";
import { hasDip, hasReading, isHolding, type AnyEntry } from "../../store/log/entry";
import { BESIDE } from "../../store/log/entry";
import { ownLimits } from "../../store/written/shop";
import { onlyAt, NOTHING_WRONG } from "../check/asknumber";
import { checkOf, type Check } from "../gate";
import type { Content } from "./content";
import type { Field } from "./fields";

/** What the page showed of a check, as it is kept beside its body. */
export interface Shown {
  readonly doubts?: Doubt[];
  readonly assessment?: object;
}

function bareOf(content: Content): Content {
  const beside: readonly string[] = BESIDE;
  return Object.fromEntries(Object.entries(content).filter(([name]) => !beside.includes(name)));
}

function assessOf({ dip, reading, now, machine }: CheckContentBody): AssessSumpBody {
  const { sump, fluid, target, units, instrument } = machine as MachineTyped;
  return {
    ...{ sump, fluid, target, units },
    ...(dip === undefined ? {} : { dip }),
    ...(reading === undefined ? {} : { reading }),
    ...(now === undefined || reading === undefined ? {} : { now }),
    ...(instrument === undefined ? {} : { instrument }),
  };
}

async function assessed(core: Core, body: CheckContentBody): Promise<Answer<Shown>> {
  const answer = await core.ask("assess_sump", assessOf(body));
  if (answer.kind !== "ok") return answer;
  const { result } = answer;
  return { kind: "ok", result: { assessment: result, doubts: result.doubts ?? [] } };
}

/** A check that nobody measured anything in has nothing to be worked out. */
export function isMeasuring(entry: AnyEntry): boolean {
  if (entry.kind === "recheck") return "machine" in entry.body && "reading" in entry.body;
  return entry.kind === "check" && (hasDip(entry) || hasReading(entry));
}

/** Dip and reading, a dip alone, or a reading alone: as the entry was made. */
export async function askWhole(
  core: Core,
  entry: AnyEntry,
  content: Content,
): Promise<Answer<Shown>> {
  const body = bareOf(content) as unknown as CheckContentBody;
  if (entry.kind === "check" && isHolding(entry)) return core.ask("hold_check", body as never);
  const isWhole = entry.kind === "check" && hasDip(entry) && hasReading(entry);
  if (!isWhole) return assessed(core, body);
  const answer = await core.ask("plan_check", body as never);
  // Without a factor there is no recipe, and never was.
  if (answer.kind === "error" && answer.error.code === "no_factor") return assessed(core, body);
  return answer;
}

/** The advice on a look that reads otherwise now; null where nothing was seen or measured. */
export function judgeOf(content: Content): JudgeLookBody | null {
  const body = content as CheckContentBody;
  const { look, ph, nitrite, dip_slide, temperature, machine } = body;
  if (look === undefined) return null;
  const { type, first_fill_ph } = (machine as MachineTyped).fluid;
  const first = body.first_fill_ph ?? first_fill_ph;
  const limits = ownLimits.value;
  return {
    seen: look.filter((code) => code !== "normal"),
    ...(type === "neat_oil" ? {} : { fluid_type: type }),
    ...(first === undefined ? {} : { first_fill_ph: first }),
    ...(ph === undefined ? {} : { ph }),
    ...(nitrite === undefined ? {} : { nitrite }),
    ...(dip_slide === undefined ? {} : { dip_slide }),
    ...(temperature === undefined ? {} : { temperature }),
    ...(limits === null ? {} : { limits }),
  };
}

async function askedAlone(core: Core, field: Field, text: string): Promise<Check | null> {
  const { quantity, unit } = field;
  return checkOf(
    await core.ask("read_quantity", unit === "1" ? { text, quantity } : { text, quantity, unit }),
  );
}

/** At Continue of one field: refused, unusual, or nothing to say. */
export async function askField(
  core: Core,
  entry: AnyEntry,
  content: Content,
  field: Field,
  text: string,
): Promise<Check | null> {
  if (text.trim() === "" || (field.kind !== "number" && field.kind !== "count"))
    return NOTHING_WRONG;
  if (field.quantity !== "") return askedAlone(core, field, text);
  if (!isMeasuring(entry)) return NOTHING_WRONG;
  return onlyAt(checkOf(await askWhole(core, entry, content)), `body.${field.name}`);
}

/** The field that a path of pycore means, where this entry has it. */
export function fieldAt(fields: readonly Field[], { path }: Pick<DeskError, "path">) {
  return fields.find(({ name }) => path.startsWith(`body.${name}`));
}
