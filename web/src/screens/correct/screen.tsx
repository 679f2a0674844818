// Correcting an entry: which field was wrong. The fields are those that were typed, each with its own page.
import { useEffect } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { AnyEntry } from "../../store/log/entry";
import { deedById, entryById, load } from "../../store/log/journal";
import { machineById } from "../../store/log/machines";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { address, back, go, replace } from "../route";
import { AfterScreen } from "./after";
import { contentOf, contentWith, textOf, type Content } from "./content";
import { draftOf, type Draft } from "./draft";
import { FieldScreen } from "./field";
import { fieldsOf, isRevocable, type Field } from "./fields";
import { AmendedScreen } from "./saved";
import { TakeBackScreen } from "./takeback";
import { changesOf, writeText } from "./written";

export interface CorrectProps {
  readonly entry: AnyEntry;
  readonly fields: readonly Field[];
  /** As the entry reads now, and as it would read. */
  readonly before: Content;
  readonly after: Content;
  readonly draft: Draft;
}

export function placeName({ machine }: AnyEntry): string | undefined {
  return machineById(machine)?.body.machine.name;
}

function Row({ field, props }: { readonly field: Field; readonly props: CorrectProps }) {
  const { entry, before, after } = props;
  const [was, now] = [textOf(before, field), textOf(after, field)];
  const isChanged = was.trim() !== now.trim();
  return (
    <div class="answer-row">
      <dt>{field.label}</dt>
      <dd>
        <span class="answer-value">{writeText(field, now)}</span>
        {isChanged ? (
          <del class="note">{say("amend.was", { value: writeText(field, was) })}</del>
        ) : null}
      </dd>
      <dd class="answer-change">
        <PlaceLink
          to={address("log", entry.id, "correct", field.name)}
          label={say("answers.change_this", { field: field.label })}
        >
          {say("change")}
        </PlaceLink>
      </dd>
    </div>
  );
}

function ListScreen(props: CorrectProps) {
  const { entry, fields, before, after } = props;
  const changes = changesOf(fields, before, after);
  const onward = (): void => {
    if (changes.length > 0) go("log", entry.id, "correct", "after");
  };
  return (
    <Page
      title={say("amend.what")}
      place={placeName(entry)}
      stays
      onBack={() => {
        back("log", entry.id);
      }}
      action={
        <MainAction onPress={onward} busy={changes.length === 0} about={JSON.stringify(after)}>
          {say("amend.look")}
        </MainAction>
      }
    >
      <p class="note">
        {writeMoment(entry.measured_at)} · {say("amend.hint")}
      </p>
      <dl class="answer-list">
        {fields.map((field) => (
          <Row key={field.name} field={field} props={props} />
        ))}
      </dl>
    </Page>
  );
}

/** An address that names no entry, or one that cannot be corrected, leads to the log. */
function Elsewhere({ id }: { readonly id: string }) {
  const isRead = load.value.kind === "ready";
  useEffect(() => {
    if (isRead) replace("log", id);
  }, [isRead, id]);
  return null;
}

function CorrectPlace({ entry, name }: { readonly entry: AnyEntry; readonly name?: string }) {
  const draft = draftOf(entry.id).value;
  const before = contentOf(entry);
  const fields = fieldsOf(entry, before);
  const after = contentWith(before, fields, draft.texts);
  const props = { entry, fields, before, after, draft };
  const field = fields.find((one) => one.name === name);
  if (fields.length === 0) return <Elsewhere id={entry.id} />;
  if (field !== undefined) return <FieldScreen key={field.name} {...props} field={field} />;
  return name === "after" ? <AfterScreen {...props} /> : <ListScreen {...props} />;
}

export const AMENDING: readonly string[] = ["correct", "take-back", "amended"];

export function AmendScreen({
  id,
  parts,
}: {
  readonly id: string;
  readonly parts: readonly string[];
}) {
  const entry = entryById(id) ?? deedById(id);
  const [place, name] = parts;
  if (entry === undefined) return <Elsewhere id={id} />;
  if (place === "amended") return <AmendedScreen entry={entry} />;
  if (!isRevocable(entry)) return <Elsewhere id={id} />;
  if (place === "take-back") return <TakeBackScreen entry={entry} />;
  return <CorrectPlace entry={entry} {...(name === undefined ? {} : { name })} />;
}
