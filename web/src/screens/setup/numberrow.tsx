// One typed number of the set-up: a field of the form, its path at pycore, and its sentence.
import type { Unit } from "../../core/messages";
import { TextField } from "../../elements/fields/textfield";
import type { Form } from "./form";
import type { Asked, Faults } from "./frame";
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

interface NumberRowsProps extends Pick<SetupProps, "form" | "change">, Faults {
  readonly parts: readonly NumberPart[];
}

export function NumberRows({ parts, form, change, at }: NumberRowsProps) {
  return (
    <>
      {parts.map(({ part, path, label, hint, unit }) => (
        <TextField
          key={part}
          id={part}
          label={label}
          {...(hint === undefined ? {} : { hint })}
          unit={unit}
          text={form[part]}
          fault={at(path)}
          onText={(text) => {
            change({ [part]: text });
          }}
        />
      ))}
    </>
  );
}
