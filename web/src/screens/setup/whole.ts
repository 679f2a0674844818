// The whole set-up as pycore reads it: machine, fluid and water, each by its own question.
import type { Answer } from "../../core/client";
import type { DeskError, Doubt, ReadMachineResult } from "../../core/messages";
import { cautionSentence, noteSentence } from "../../words/codes";
import { machineById } from "../../store/log/machines";
import { say } from "../../words/say";
import { useAnswer } from "../core";
import { machineOf, type Form } from "./form";
import { fluidBody, useNow, waterBody } from "./fluid/together";

export type Reading =
  | { readonly kind: "waiting" }
  | { readonly kind: "down" }
  | { readonly kind: "error"; readonly error: DeskError }
  | {
      readonly kind: "read";
      readonly machine: ReadMachineResult;
      readonly doubts: readonly Doubt[];
      /** Sentences, the gravest first. */
      readonly cautions: readonly string[];
    };

/** Said at the factor itself. */
const ELSEWHERE: readonly string[] = ["no_factor"];

/** Where both are known; a name that was only filled in is no other coolant. */
function isOther(before: string | undefined, now: string | undefined): boolean {
  const [old, other] = [before?.trim() ?? "", now?.trim() ?? ""];
  return old !== "" && other !== "" && old !== other;
}

/** A sump that holds one coolant gets another one. */
function otherFluid(form: Form): readonly string[] {
  const before = machineById(form.machine)?.body.machine.fluid;
  const { fluid } = machineOf(form);
  return isOther(before?.name, fluid.name) || isOther(before?.type, fluid.type)
    ? [say("setup_check.other_fluid")]
    : [];
}

function firstError(answers: readonly (Answer<unknown> | null)[]): DeskError | undefined {
  return answers
    .map((answer) => (answer?.kind === "error" ? answer.error : undefined))
    .find(Boolean);
}

export function useWhole(form: Form, isAsked: boolean): Reading {
  const now = useNow();
  const water = isAsked ? waterBody(form) : null;
  const machine = useAnswer("read_machine", isAsked ? { machine: machineOf(form) } : null);
  const fluid = useAnswer("read_fluid", isAsked ? fluidBody(form, now) : null);
  const wet = useAnswer("read_water", water);
  const answers = [machine, fluid, wet];
  const error = firstError(answers);
  if (error !== undefined) return { kind: "error", error };
  if (answers.some((answer) => answer?.kind === "down")) return { kind: "down" };
  if (machine?.kind !== "ok" || fluid?.kind !== "ok") return { kind: "waiting" };
  if (water !== null && wet?.kind !== "ok") return { kind: "waiting" };
  const watered = wet?.kind === "ok" ? wet.result : null;
  const notes = fluid.result.notes.filter((note) => !ELSEWHERE.includes(note));
  return {
    kind: "read",
    machine: machine.result,
    doubts: [...machine.result.doubts, ...fluid.result.doubts, ...(watered?.doubts ?? [])],
    cautions: [
      ...otherFluid(form),
      ...fluid.result.cautions.map(cautionSentence),
      ...(watered?.cautions ?? []).map(cautionSentence),
      ...notes.map(noteSentence),
    ],
  };
}
