// The jugs themselves: water, concentrate and reading of each; added, taken out, and one step back.
import { OtherAction } from "../../../elements/buttons";
import { Cell } from "../../../elements/fields/cell";
import { Fault } from "../../../elements/fault";
import { unitSign, unitSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Unit } from "../../../core/messages";
import { useCore } from "../../core";
import { checkOf, type Check } from "../../gate";
import type { Form } from "../form";
import { Question, type Asked, type Faults } from "../frame";
import { instrumentOf, scaleQuantity, scaleUnit, today } from "../fluid/glass";
import {
  changedJug,
  fitBody,
  jugsUndone,
  LEAST_JUGS,
  MOST_JUGS,
  withJug,
  withoutJug,
  type JugRow,
} from "./jugs";
import type { SetupProps } from "../steps";

const PARTS = ["water", "concentrate", "shows"] as const;

function unitOf(form: Form, part: keyof JugRow): Unit {
  if (part === "water") return form.units[form.jugsWater];
  if (part === "concentrate") return form.units.jug;
  return scaleUnit(instrumentOf(form, form.units.pail).instrument);
}

function askedOfJugs(form: Form): readonly Asked[] {
  const shows = form.glassShows === "none" ? "brix" : form.glassShows;
  return form.jugs.flatMap((jug, i) =>
    PARTS.map((part) => ({
      path: `jugs[${i}].${part}`,
      text: jug[part],
      unit: unitOf(form, part),
      ...(part === "shows" ? { quantity: scaleQuantity("reading", shows) } : {}),
    })),
  );
}

/** The refusals of the fit; its doubts are asked beside its result. */
function useFitRefusals(form: Form) {
  const core = useCore();
  return async (): Promise<Check | null> => {
    const { instrument } = instrumentOf(form, form.units.pail);
    const check = checkOf(await core.ask("fit_factor", fitBody(form, instrument, today())));
    return check === null ? null : { errors: check.errors, doubts: [] };
  };
}

type JugProps = Pick<SetupProps, "form" | "change"> & Faults & { readonly row: number };

function TakeOut({ form, change, row }: Omit<JugProps, "at">) {
  if (form.jugs.length <= LEAST_JUGS) return null;
  return (
    <button
      type="button"
      class="take-out"
      aria-label={say("mixes.remove_this", { row: String(row + 1) })}
      onClick={() => {
        change(withoutJug(form, row));
      }}
    >
      {say("mixes.remove")}
    </button>
  );
}

function Jug({ form, change, at, row }: JugProps) {
  const jug = form.jugs[row];
  if (jug === undefined) return null;
  const faults = new Set(
    PARTS.map((part) => at(`jugs[${row}].${part}`)).filter((text) => text !== undefined),
  );
  const number = String(row + 1);
  return (
    <section class="jug" aria-labelledby={`jug-${number}`}>
      <div class="jug-head">
        <h2 id={`jug-${number}`}>{say("mixes.jug", { row: number })}</h2>
        <TakeOut form={form} change={change} row={row} />
      </div>
      {[...faults].map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      <div class="jug-cells">
        {PARTS.map((part) => {
          const unit = unitOf(form, part);
          return (
            <div key={part} class="jug-cell">
              <span class="note" aria-hidden="true">
                {say(`mixes.${part}`)}
              </span>
              <Cell
                label={say(`mixes.cell_${part}`, { row: number, unit: unitSpoken(unit) })}
                text={jug[part]}
                faulty={at(`jugs[${row}].${part}`) !== undefined}
                onText={(text) => {
                  change(changedJug(form, row, { [part]: text }));
                }}
              />
              <span class="note" aria-hidden="true">
                {unitSign(unit)}
              </span>
            </div>
          );
        })}
      </div>
    </section>
  );
}

function Rows({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  return (
    <>
      {form.jugs.map((_, i) => (
        <Jug key={i} form={form} change={change} at={at} row={i} />
      ))}
      {form.jugs.length < MOST_JUGS ? (
        <OtherAction
          onPress={() => {
            change(withJug(form));
          }}
        >
          {say("mixes.add")}
        </OtherAction>
      ) : null}
      {form.jugsBefore.length > 0 ? (
        <OtherAction
          onPress={() => {
            change(jugsUndone(form));
          }}
        >
          {say("mixes.undo")}
        </OtherAction>
      ) : null}
    </>
  );
}

export function MixesStep(props: SetupProps) {
  const { form, change } = props;
  const whole = useFitRefusals(form);
  return (
    <Question
      {...props}
      title={say("mixes.title")}
      hint={say("mixes.hint")}
      why={say("mixes.why")}
      fields={askedOfJugs(form)}
      whole={whole}
    >
      {({ at }) => <Rows form={form} change={change} at={at} />}
    </Question>
  );
}
