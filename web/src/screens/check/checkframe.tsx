// The frame of every page that stands at the recipe's place, and the way to ask the calculator again.
import type { ComponentChildren } from "preact";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { say } from "../../words/say";
import { useCore } from "../core";
import { MishapLink } from "../mishap/link";
import { HeldLine } from "../told/stated";
import { DespiteLine } from "./look/dead";
import { readAt } from "./save";
import type { CheckProps } from "./steps";
import { UnmixedLine } from "./unmixed";

export function CheckFrame({
  props,
  title,
  children,
  action,
}: {
  props: CheckProps;
  title: string;
  children: ComponentChildren;
  action?: ComponentChildren;
}) {
  return (
    <Page
      title={title}
      place={props.machine.body.machine.name}
      step={props.step}
      onBack={props.onBack}
      action={action}
      stays
    >
      <HeldLine machine={props.machine.machine} />
      <DespiteLine machine={props.machine.machine} />
      <UnmixedLine machine={props.machine.machine} read_at={readAt(props.walk)} />
      {children}
      <MishapLink machine={props.machine.machine} />
    </Page>
  );
}

/** A new worker answers every open question again. */
export function TryAgain() {
  const core = useCore();
  return (
    <MainAction
      onPress={() => {
        core.restart();
      }}
    >
      {say("again")}
    </MainAction>
  );
}
