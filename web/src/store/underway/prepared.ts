// What is answered beside a walk and stored with it: its entry as it was prepared no longer stands for it.
import { changeWalk, walkOf } from "./walk";

export function dropPrepared(machine: string): void {
  if (walkOf(machine).value.prepared !== null) changeWalk(machine, {});
}
