// Learn: ten cards with one idea each, and the way to practice.
import type { ComponentChildren } from "preact";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { say, type Key } from "../../words/say";
import { useResult } from "../core";
import { CoreTrouble } from "../foot";
import { address, back, go, replace } from "../route";
import { CARDS, type Card } from "./cards";
import { ChooseTable } from "./choose";
import { checkAt } from "./sump";
import { TryDip, TryFactor, TryStrength } from "./trymeasure";
import { TryEvaporate, TryPercent, TryTopUp } from "./trymix";
import { TryAgain, TryOrder } from "./tryorder";

const TRIES: Readonly<Record<Card, (at: string | undefined) => ComponentChildren>> = {
  strength: () => <TryStrength />,
  dip: () => <TryDip />,
  factor: () => <TryFactor />,
  evaporate: () => <TryEvaporate />,
  percent: () => <TryPercent />,
  top_up: () => <TryTopUp />,
  choose: (at) => <ChooseTable at={at} />,
  order: () => <TryOrder />,
  again: () => <TryAgain />,
  safety: () => null,
};

function List() {
  return (
    <Page
      title={say("learn.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          onPress={() => {
            go("practice");
          }}
        >
          {say("learn.practise")}
        </MainAction>
      }
    >
      <p>{say("learn.intro")}</p>
      <ol class="learn-list">
        {CARDS.map((card, i) => (
          <li key={card}>
            <a class="learn-row" href={address("learn", card)}>
              <span class="ring-number" aria-hidden="true">
                {i + 1}
              </span>
              <span class="machine-name">{say(`learn.${card}.title`)}</span>
            </a>
          </li>
        ))}
      </ol>
      <p class="note">{say("learn.practise_use")}</p>
      <CoreTrouble />
    </Page>
  );
}

/** How long a pump runs is a number of the recipe, not of the card. */
function useText(card: Card): string {
  const plan = useResult("plan_check", card === "again" ? checkAt("342", "4.0") : null)?.plan;
  const run = plan?.steps.find(({ kind }) => kind === "run");
  if (card !== "again") return say(`learn.${card}.text`);
  return run?.minutes === undefined
    ? ""
    : say("learn.again.text", { minutes: String(run.minutes) });
}

function onwardKey(found: string | undefined, next: Card | undefined): Key {
  if (found !== undefined) return "learn.to_check";
  return next === undefined ? "learn.practise" : "learn.next";
}

/** No measured sump stands behind these. */
const NOT_DRAWN: readonly Card[] = ["choose", "safety"];

interface CardProps {
  readonly card: Card;
  /** The case of the check that it was opened from. */
  readonly at: string | undefined;
}

function CardPage({ card, at: found }: CardProps) {
  const at = CARDS.indexOf(card);
  const next = CARDS[at + 1];
  const text = useText(card);
  const goOn = (): void => {
    if (found !== undefined) back("learn");
    else if (next === undefined) go("practice");
    else replace("learn", next);
  };
  return (
    <Page
      title={say(`learn.${card}.title`)}
      place={say("learn.title")}
      step={say("learn.step", { n: String(at + 1), all: String(CARDS.length) })}
      onBack={() => {
        back("learn");
      }}
      action={
        <MainAction onPress={goOn} about={card}>
          {say(onwardKey(found, next))}
        </MainAction>
      }
    >
      {TRIES[card](found)}
      {card === "safety" ? <section class="cautions">{text}</section> : <p>{text}</p>}
      <p class="note">{say("learn.source", { source: say(`learn.${card}.source`) })}</p>
      {NOT_DRAWN.includes(card) ? null : <p class="note">{say("learn.about")}</p>}
      <PlaceLink to={address("learn")}>{say("learn.all")}</PlaceLink>
      <CoreTrouble />
    </Page>
  );
}

export function LearnScreen({
  card: place,
  at,
}: {
  readonly card: string | undefined;
  readonly at: string | undefined;
}) {
  const card = CARDS.find((one) => one === place);
  return card === undefined ? <List /> : <CardPage key={card} card={card} at={at} />;
}
