// Our own keys: big enough for a glove, digits like a telephone, and the same on every phone.
import type { ComponentChildren } from "preact";
import { useLayoutEffect } from "preact/hooks";
import { DECIMAL_SIGN } from "../../words/numbers";
import { say } from "../../words/say";
import { chosenKeys } from "./keys";

export type Sign = "whole" | "decimal";

interface KeypadProps {
  readonly text: string;
  readonly sign: Sign;
  readonly onText: (text: string) => void;
  /** A key is held that will make this text, unless the finger slides off. */
  readonly onSoon?: ((text: string) => void) | undefined;
}

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

/** Drawn: not every phone's font has the sign, and one that must be looked for elsewhere comes later. */
function DeleteSign() {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d="M9 5h12v14H9l-6-7zM11.5 8.5l7 7M18.5 8.5l-7 7" />
    </svg>
  );
}

function Key({
  face,
  name,
  onPress,
  onHold,
  quiet = false,
}: {
  face: ComponentChildren;
  name?: string;
  onPress: () => void;
  onHold: () => void;
  quiet?: boolean;
}) {
  return (
    <button
      type="button"
      class={quiet ? "key key-quiet" : "key"}
      onPointerDown={onHold}
      onClick={onPress}
      {...(name === undefined ? {} : { "aria-label": name })}
    >
      {face}
    </button>
  );
}

/** At a desk the page's keys are those of the keyboard too, wherever the focus is but in a field. */
function useKeyboard({ text, sign, onText }: KeypadProps): void {
  // At once after each digit: the next one goes on from it.
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const { key, target } = event;
      const isElsewhere = target instanceof Element && target.matches("input, textarea, select");
      if (isElsewhere || event.ctrlKey || event.metaKey || event.altKey) return;
      if (/^[0-9]$/.test(key)) onText(text + key);
      else if (sign === "decimal" && (key === "." || key === ",")) onText(text + DECIMAL_SIGN);
      else if (key === "Backspace") onText(text.slice(0, -1));
      else return;
      event.preventDefault();
    };
    window.addEventListener("keydown", press);
    return () => {
      window.removeEventListener("keydown", press);
    };
  }, [text, sign, onText]);
}

/** Nothing where the phone's own keyboard is wanted. */
export function Keypad(props: KeypadProps) {
  const { text, sign, onText, onSoon } = props;
  useKeyboard(props);
  if (chosenKeys() === "phone") return null;
  const making = (next: string) => ({
    onPress: () => {
      onText(next);
    },
    onHold: () => {
      onSoon?.(next);
    },
  });
  return (
    <div class="keypad" role="group" aria-label={say("keys.name")}>
      {DIGITS.map((digit) => (
        <Key key={digit} face={digit} {...making(text + digit)} />
      ))}
      {sign === "decimal" ? (
        <Key face={DECIMAL_SIGN} name={say("keys.decimal")} {...making(text + DECIMAL_SIGN)} />
      ) : (
        <Key face={say("keys.clear")} quiet {...making("")} />
      )}
      <Key face="0" {...making(`${text}0`)} />
      <Key face={<DeleteSign />} name={say("keys.delete")} quiet {...making(text.slice(0, -1))} />
    </div>
  );
}
