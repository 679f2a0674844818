// Answers of a page that hang together with other pages: read with the whole machine.
import { useCore } from "../core";
import { checkOf } from "../gate";
import { machineOf, type Form } from "./form";

/** Order is settled by pycore with the whole machine; faults of other pages are not this page's. */
export function useTogether(form: Form, paths: readonly string[]) {
  const core = useCore();
  return async () => {
    const check = checkOf(await core.ask("read_machine", { machine: machineOf(form) }));
    if (check === null) return null;
    const errors = check.errors.filter((error) =>
      paths.some((path) => error.path.startsWith(`body.machine.${path}`)),
    );
    return { errors, doubts: [] };
  };
}
