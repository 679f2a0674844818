// The question about a machine's trend, with the shop's own thresholds.
import { useState } from "preact/hooks";
import type { Answer } from "../../core/client";
import type { TrendResult } from "../../core/messages";
import { lines } from "../../store/log/journal";
import { linesOf } from "../../store/log/onemachine";
import { ownLimits } from "../../store/written/shop";
import { isoWithOffset } from "../../words/times";
import { useAsked } from "../backup/asked";

/** `days` null: the whole log. */
export function useTrend(machine: string, days: number | null): Answer<TrendResult> | null {
  const [now] = useState(() => isoWithOffset(new Date()));
  const about = `${machine} ${String(days)} ${String(lines.value.length)} ${now}`;
  return useAsked("trend", about, () => {
    const limits = ownLimits.value;
    return {
      lines: linesOf(machine),
      now,
      machine,
      ...(days === null ? {} : { days }),
      ...(limits === null ? {} : { limits }),
    };
  });
}
