// The forms of set-ups that are open. A form that nobody changed is made anew from what is stored.
import { signal, type Signal } from "@preact/signals";
import { dropDraft, readDraft, writeDraft } from "../../store/underway/drafts";
import type { MachineEntry } from "../../store/log/entry";
import { draftOf, formOf, newForm, type Form } from "./form";

const open = new Map<string, Signal<Form>>();

const noteOf = (key: string): string => `setup.${key}`;

export function formFor(key: string, machine: MachineEntry | null): Signal<Form> {
  const known = open.get(key);
  if (known !== undefined) return known;
  const fresh = machine === null ? newForm() : formOf(machine.machine, machine.body.machine);
  const form = signal<Form>(draftOf(readDraft(noteOf(key))) ?? fresh);
  open.set(key, form);
  return form;
}

export function changeForm(key: string, form: Signal<Form>, part: Partial<Form>): void {
  form.value = { ...form.value, ...part };
  writeDraft(noteOf(key), form.value);
}

/** The form is done: the next one starts from what is stored. */
export function endForm(key: string): void {
  dropDraft(noteOf(key));
  open.delete(key);
}

/** Stored past an open form: a change under way gets it too, or saving that would undo it. */
export function putBeside(machine: MachineEntry, part: Partial<Form>): void {
  const key = machine.machine;
  const isChanged = draftOf(readDraft(noteOf(key))) !== null;
  if (isChanged) changeForm(key, formFor(key, machine), part);
  else open.delete(key);
}
