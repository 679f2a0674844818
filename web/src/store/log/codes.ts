// The codes on the machines: which machine a code leads to.
import { computed } from "@preact/signals";
import type { MachineEntry } from "./entry";
import { recent } from "./journal";
import { machineById } from "./machines";

/** A code that was printed once stays: were two given in two windows, both still lead to the machine. */
const codes = computed<readonly (readonly [code: string, machine: string])[]>(() =>
  recent.value.flatMap((entry) =>
    entry.kind === "machine" && entry.code !== undefined ? [[entry.code, entry.machine]] : [],
  ),
);

export function codeOf(machine: string): string | undefined {
  return codes.value.find(([, owner]) => owner === machine)?.[0];
}

export function machineByCode(code: string): MachineEntry | undefined {
  const owner = codes.value.find(([known]) => known === code)?.[1];
  return owner === undefined ? undefined : machineById(owner);
}
