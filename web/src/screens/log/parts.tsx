// What the pages of an entry have in common.
import type { AnyEntry } from "../../store/log/entry";
import { writeCount } from "../../words/numbers";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import type { Fact } from "../setup/facts";

export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl class="fact-list">
      {facts.map(([name, value]) => (
        <div key={name} class="fact-row">
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

export function Versions({ entry }: { readonly entry: AnyEntry }) {
  const blanks = {
    number: writeCount(entry.seq),
    build: entry.versions.build,
    pycore: entry.versions.pycore,
  };
  return <p class="note versions">{say("entry.versions", blanks)}</p>;
}

/** When, and who says so. */
export function When({ entry }: { readonly entry: AnyEntry }) {
  const by = entry.by === undefined ? "" : ` · ${say("tell.by", { by: entry.by })}`;
  return <p>{writeMoment(entry.measured_at) + by}</p>;
}
