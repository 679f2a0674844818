// A page about one deed: an address that names none, or one of another kind, leads to the list.
import { useEffect } from "preact/hooks";
import type { DeedEntry } from "../../store/log/entry";
import { deedById, load } from "../../store/log/journal";
import { replace } from "../route";

type OfKind<K extends DeedEntry["kind"]> = Extract<DeedEntry, { readonly kind: K }>;

export function useDeed<K extends DeedEntry["kind"]>(id: string, kind: K): OfKind<K> | null {
  const entry = deedById(id);
  const found = entry?.kind === kind ? (entry as OfKind<K>) : null;
  const isMissing = found === null && (entry !== undefined || load.value.kind === "ready");
  useEffect(() => {
    if (isMissing) replace();
  }, [isMissing]);
  return found;
}
