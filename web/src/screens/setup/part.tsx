// One of several choices on a page: its own heading names the answers below it.
import { Choice, type Option } from "../../elements/fields/choice";

interface PartProps<T extends string> {
  readonly name: string;
  readonly title: string;
  readonly options: readonly Option<T>[];
  readonly chosen: T | "";
  readonly onChoose: (value: T) => void;
}

export function ChoicePart<T extends string>({ title, ...rest }: PartProps<T>) {
  const heading = `${rest.name}-title`;
  return (
    <section class="question-part">
      <h2 id={heading}>{title}</h2>
      <Choice labelledBy={heading} {...rest} />
    </section>
  );
}
