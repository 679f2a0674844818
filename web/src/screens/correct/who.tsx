// Why, and who says so: of every entry that is about other ones.
import { TextField } from "../../elements/fields/textfield";
import { MOST_OF_NAME } from "../../store/phone/name";
import { say } from "../../words/say";

/** The contract lets a reason be 2,000; the one that was chosen may stand before what was typed. */
const MOST_OF_REASON = 1900;

interface Who {
  readonly reason: string;
  readonly by: string;
}

/** A longer one would make a line that nobody may use. */
export function isTooLong({ reason, by }: Who): boolean {
  return reason.trim().length > MOST_OF_REASON || by.trim().length > MOST_OF_NAME;
}

function faultOf(text: string, most: number): string | undefined {
  const { length } = text.trim();
  return length > most ? say("who.long", { most: String(most), got: String(length) }) : undefined;
}

/** Where a reason was chosen above, this asks for more about it. */
export function WhoFields({
  draft: { reason, by },
  onChange,
  why = "amend.reason",
}: {
  readonly draft: Who;
  readonly onChange: (change: Partial<Who>) => void;
  readonly why?: "amend.reason" | "amend.more";
}) {
  return (
    <>
      <TextField
        id="amend-reason"
        label={say(why)}
        number={false}
        text={reason}
        fault={faultOf(reason, MOST_OF_REASON)}
        onText={(text) => {
          onChange({ reason: text });
        }}
      />
      <TextField
        id="amend-by"
        label={say("tag.name")}
        hint={say("tag.name_hint")}
        number={false}
        text={by}
        fault={faultOf(by, MOST_OF_NAME)}
        onText={(text) => {
          onChange({ by: text });
        }}
      />
    </>
  );
}
