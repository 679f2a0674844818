// Which metals are worked here. Magnesium is asked for because water on its chips can burn.
import type { Option } from "../../../elements/fields/choice";
import { Remarks } from "../../../elements/remarks";
import { Ticks } from "../../../elements/fields/ticks";
import { cautionSentence, metalWord } from "../../../words/codes";
import { say } from "../../../words/say";
import { Question } from "../frame";
import { ChoicePart } from "../part";
import type { Metal, RecordForm } from "./record";
import type { SetupProps } from "../steps";
import { useFluidSaid } from "./together";

const METALS: readonly { readonly value: Metal; readonly word: string }[] = (
  ["steel", "cast_iron", "aluminium", "copper", "titanium", "magnesium", "other"] as const
).map((value) => ({ value, word: metalWord(value) }));

const MADE_FOR: readonly Option<Exclude<RecordForm["madeForMagnesium"], "">>[] = (
  ["yes", "no"] as const
).map((value) => ({ value, word: say(`metals.made_${value}`) }));

const CAUTIONS: readonly string[] = ["magnesium", "magnesium_not_asked", "not_made_for_magnesium"];

export function MetalsStep(props: SetupProps) {
  const { form, change } = props;
  const said = useFluidSaid(form)?.cautions.filter((code) => CAUTIONS.includes(code)) ?? [];
  const isMagnesium = form.metals.includes("magnesium");
  const isOpen = isMagnesium && form.madeForMagnesium === "";
  return (
    <Question
      {...props}
      title={say("metals.title")}
      hint={say("metals.hint")}
      why={say("metals.why")}
      missing={isOpen ? say("error.made_for_magnesium") : null}
    >
      {() => (
        <>
          <Ticks
            labelledBy="question"
            options={METALS}
            chosen={form.metals}
            onChange={(metals) => {
              change({ metals });
            }}
          />
          {isMagnesium ? (
            <ChoicePart
              name="made-for-magnesium"
              title={say("metals.made_for")}
              options={MADE_FOR}
              chosen={form.madeForMagnesium}
              onChoose={(madeForMagnesium) => {
                change({ madeForMagnesium });
              }}
            />
          ) : null}
          <Remarks texts={said.map(cautionSentence)} />
        </>
      )}
    </Question>
  );
}
