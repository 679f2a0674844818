// "Why?" opens in place and pushes the rest down, so that the question stays where it was.
import { useState } from "preact/hooks";
import { say } from "../words/say";

interface HintProps {
  readonly id: string;
  readonly hint: string;
  readonly why: string;
  /** A card that shows it. */
  readonly more?: { readonly to: string; readonly word: string };
}

export function Hint({ id, hint, why, more }: HintProps) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <div class="hint-row">
        <p id={id} class="note">
          {hint}
        </p>
        <button
          type="button"
          class="why"
          aria-expanded={open}
          aria-controls={`${id}-why`}
          onClick={() => {
            setOpen(!open);
          }}
        >
          {say("why")}
        </button>
      </div>
      <div id={`${id}-why`} class="why-text" hidden={!open}>
        <p>{why}</p>
        {more === undefined ? null : (
          <a class="place-link" href={more.to}>
            {more.word}
          </a>
        )}
      </div>
    </>
  );
}
