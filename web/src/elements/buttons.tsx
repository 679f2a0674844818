import type { ComponentChildren } from "preact";
import { useGuard, useRest } from "./guard";

interface Pressed {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

interface MainActionProps extends Pressed {
  readonly busy?: boolean;
  /** What the press is about; with another answer on the page it is a new press. */
  readonly about?: string;
  /** On a page that a press on Save has brought: the taps that were one too many end here. */
  readonly rests?: boolean;
}

/** The one action that goes on: full width, at the bottom, ignores a double tap. */
export function MainAction(props: MainActionProps) {
  const { onPress, children, busy = false, about = "", rests = false } = props;
  const isResting = useRest(rests);
  const guarded = useGuard(onPress, about);
  const press = (event: MouseEvent): void => {
    if (!isResting) guarded(event);
  };
  return (
    <button type="button" class="main-action" onClick={press} aria-disabled={busy || isResting}>
      {children}
    </button>
  );
}

/** Another way on, of less weight. */
export function OtherAction({ onPress, children }: Pressed) {
  const press = useGuard(onPress);
  return (
    <button type="button" class="other-action" onClick={press}>
      {children}
    </button>
  );
}

/** A quiet way off the ordinary one, in the top bar: the keys below need all the room. */
export function SideAction({ onPress, children }: Pressed) {
  return (
    <button type="button" class="swap" onClick={onPress}>
      {children}
    </button>
  );
}

/** A place to go to. A link, so that it can be opened and announced as one. */
export function PlaceLink({
  to,
  label,
  children,
}: {
  readonly to: string;
  readonly label?: string;
  readonly children: ComponentChildren;
}) {
  return (
    <a class="place-link" href={to} {...(label === undefined ? {} : { "aria-label": label })}>
      {children}
    </a>
  );
}
