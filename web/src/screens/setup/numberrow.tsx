// One typed number of the set-up: a field of the form, its path at pycore, and its sentence.
import { Fragment } from "preact";
import type { Unit } from "../../core/messages";
import { TextField } from "../../elements/fields/textfield";
import { hasOwnUnit, write, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { useResult } from "../core";
import type { Form } from "./form";
import { quantityOf, type Asked, type Faults } from "./frame";
import type { SetupProps } from "./steps";

/** The parts of the form that are one typed text; a choice of a few words is none. */
type Part = { [K in keyof Form]: string extends Form[K] ? K : never }[keyof Form];

export interface NumberPart {
  readonly part: Part;
  readonly path: string;
  readonly label: string;
  readonly hint?: string;
  readonly unit: Unit;
  /** Where the path alone does not tell what the number is. */
  readonly quantity?: string;
}

export function askedOf(parts: readonly NumberPart[], form: Form): readonly Asked[] {
  return parts.map(({ part, path, unit, quantity }) => ({
    path,
    text: form[part],
    unit,
    ...(quantity === undefined ? {} : { quantity }),
  }));
}

/** Of fields that may stay empty, those that do not. */
export function givenOf(parts: readonly NumberPart[], form: Form): readonly Asked[] {
  return askedOf(parts, form).filter(({ text }) => text.trim() !== "");
}

/** A unit of one's own is taken; below the field stands what it comes to in the field's. */
function InUnit({ path, text, unit, ...asked }: Asked) {
  const quantity = quantityOf({ path, ...asked });
  const body = hasOwnUnit(text) ? { text, quantity, unit } : null;
  const same = useResult("read_quantity", body)?.in_unit;
  if (same === undefined) return null;
  return (
    <p class="note" role="status">
      {say("field.in_unit", { typed: writeTyped({ text, unit }), same: write(same) })}
    </p>
  );
}

interface NumberRowsProps extends Pick<SetupProps, "form" | "change">, Faults {
  readonly parts: readonly NumberPart[];
}

export function NumberRows({ parts, form, change, at }: NumberRowsProps) {
  return (
    <>
      {parts.map(({ part, label, hint, ...asked }) => (
        <Fragment key={part}>
          <TextField
            id={part}
            label={label}
            {...(hint === undefined ? {} : { hint })}
            unit={asked.unit}
            text={form[part]}
            fault={at(asked.path)}
            onText={(text) => {
              change({ [part]: text });
            }}
          />
          <InUnit {...asked} text={form[part]} />
        </Fragment>
      ))}
    </>
  );
}
