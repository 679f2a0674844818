// Places of the log that several entries claim: what they are, and which of them count.
import { useEffect } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { Fork } from "../../store/log/forks";
import { forks, load } from "../../store/log/journal";
import type { Line } from "../../store/log/lines";
import { say, sayCount } from "../../words/say";
import { address, back, replace } from "../route";
import { ALL } from "./saving";
import { DecideAllScreen, DecideScreen } from "./decide";
import { lineWords, openForks } from "./words";

function LineRow({ line, isLeft }: { readonly line: Line; readonly isLeft: boolean }) {
  const { text, parts } = lineWords(line);
  return (
    <span class="claimed-line">
      {isLeft ? <del>{text}</del> : <span>{text}</span>}
      <span class="note">{parts}</span>
    </span>
  );
}

function Place({ fork }: { readonly fork: Fork }) {
  const { name, lines, chosen, reasons } = fork;
  return (
    <li>
      <a class="log-row" href={address("log", "claimed", name)}>
        {lines.map((line) => (
          <LineRow key={line.hash} line={line} isLeft={chosen?.has(line.hash) === false} />
        ))}
        {reasons.map((reason) => (
          <span key={reason} class="claimed-line note">
            {say("claimed.decision", { reason })}
          </span>
        ))}
      </a>
    </li>
  );
}

function Places({ title, list }: { readonly title: string; readonly list: readonly Fork[] }) {
  if (list.length === 0) return null;
  return (
    <section class="log-day">
      <h2>{title}</h2>
      <ul class="log-list">
        {list.map((fork) => (
          <Place key={fork.name} fork={fork} />
        ))}
      </ul>
    </section>
  );
}

function ListScreen() {
  const open = openForks();
  const decided = forks.value.filter(({ chosen }) => chosen !== null);
  const isRead = load.value.kind === "ready";
  return (
    <Page
      title={say("claimed.title")}
      onBack={() => {
        back("log");
      }}
    >
      {isRead ? null : <p role="status">{say("machines.reading")}</p>}
      {isRead && open.length === 0 ? <p>{say("claimed.none_open")}</p> : null}
      {open.length === 0 ? null : <p>{say("claimed.text")}</p>}
      {open.length < 2 ? null : (
        <PlaceLink to={address("log", "claimed", ALL)}>{say("claimed.all")}</PlaceLink>
      )}
      <Places title={say("claimed.open")} list={open} />
      <Places title={say("claimed.decided")} list={decided} />
    </Page>
  );
}

/** Reached only when the store has answered and the stored text was read back. */
function SavedScreen({ fork }: { readonly fork: Fork | undefined }) {
  const left = openForks().length;
  const counting = fork?.chosen?.size;
  const saved =
    counting === 0
      ? say("claimed.saved_none")
      : counting === undefined
        ? say("claimed.saved")
        : sayCount("claimed.saved_one", counting);
  const onward = (): void => {
    replace(...(left > 0 ? ["log", "claimed"] : ["log"]));
  };
  return (
    <Page
      title={say("saved.title")}
      onBack={onward}
      action={
        <MainAction rests onPress={onward}>
          {left > 0 ? say("claimed.next") : say("tell.done")}
        </MainAction>
      }
    >
      <p role="status">{saved}</p>
      <p class="saved-next">
        {left === 0 ? say("claimed.none_open") : sayCount("claimed.left", left)}
      </p>
      {counting === 1 || counting === 0 ? null : <p>{say("claimed.look")}</p>}
    </Page>
  );
}

/** An address that names no such place leads to the list of them. */
function Elsewhere() {
  const isRead = load.value.kind === "ready";
  useEffect(() => {
    if (isRead) replace("log", "claimed");
  }, [isRead]);
  return null;
}

export function ClaimedScreen({ parts }: { readonly parts: readonly string[] }) {
  const [name, place] = parts;
  if (name === undefined) return <ListScreen />;
  const fork = forks.value.find((one) => one.name === name);
  if (fork === undefined && name !== ALL) return <Elsewhere />;
  if (place === "saved") return <SavedScreen fork={fork} />;
  if (fork !== undefined) return <DecideScreen key={name} fork={fork} />;
  return openForks().length === 0 ? <Elsewhere /> : <DecideAllScreen />;
}
