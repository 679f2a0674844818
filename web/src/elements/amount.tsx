// One amount in one line: order, word, number, unit. The number is the largest thing on the page.
import type { Shown } from "../core/messages";
import { unitSign, writeNumber } from "../words/numbers";

export function Amount({
  order,
  word,
  amount,
}: {
  /** Left out where there is only one amount. */
  readonly order?: string;
  readonly word: string;
  readonly amount: Shown;
}) {
  return (
    <p class="amount">
      {order === undefined ? null : <span class="ring-number">{order}</span>}
      <span class="amount-word">{word}</span>
      <span class="amount-value">
        <b>{writeNumber(amount)}</b>
        <span class="amount-unit">
          {"\u00a0"}
          {unitSign(amount.unit)}
        </span>
      </span>
    </p>
  );
}
