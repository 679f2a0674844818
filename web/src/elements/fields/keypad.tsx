// Our own keys: big enough for a glove, digits like a telephone, and the same on every phone.
import { DECIMAL_SIGN } from "../../words/numbers";
import { say } from "../../words/say";

export type Sign = "whole" | "decimal";

interface KeypadProps {
  readonly text: string;
  readonly sign: Sign;
  readonly onText: (text: string) => void;
}

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

function Key({
  face,
  name,
  onPress,
  quiet = false,
}: {
  face: string;
  name?: string;
  onPress: () => void;
  quiet?: boolean;
}) {
  return (
    <button
      type="button"
      class={quiet ? "key key-quiet" : "key"}
      onClick={onPress}
      {...(name === undefined ? {} : { "aria-label": name })}
    >
      {face}
    </button>
  );
}

export function Keypad({ text, sign, onText }: KeypadProps) {
  const put = (more: string) => () => {
    onText(text + more);
  };
  return (
    <div class="keypad" role="group" aria-label={say("keys.name")}>
      {DIGITS.map((digit) => (
        <Key key={digit} face={digit} onPress={put(digit)} />
      ))}
      {sign === "decimal" ? (
        <Key face={DECIMAL_SIGN} name={say("keys.decimal")} onPress={put(DECIMAL_SIGN)} />
      ) : (
        <Key
          face={say("keys.clear")}
          quiet
          onPress={() => {
            onText("");
          }}
        />
      )}
      <Key face="0" onPress={put("0")} />
      <Key
        face="⌫"
        name={say("keys.delete")}
        quiet
        onPress={() => {
          onText(text.slice(0, -1));
        }}
      />
    </div>
  );
}
