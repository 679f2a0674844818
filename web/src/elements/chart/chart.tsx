// A chart that is drawn anew when its width or the theme changes.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Drawn } from "./drawn";
import { makePlot } from "./plot";

interface ChartProps {
  /** What it shows, in words: a drawing has none of its own. */
  readonly name: string;
  readonly drawn: Drawn;
}

/** Counts the changes of light and dark and of width. */
function useRedraws(host: { readonly current: HTMLElement | null }): number {
  const [count, setCount] = useState(0);
  useEffect(() => {
    const again = (): void => {
      setCount((n) => n + 1);
    };
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const paper = matchMedia("print");
    const theme = new MutationObserver(again);
    let wide = host.current?.clientWidth;
    // Its height is the chart's own doing.
    const size = new ResizeObserver(() => {
      if (host.current?.clientWidth === wide) return;
      wide = host.current?.clientWidth;
      again();
    });
    dark.addEventListener("change", again);
    paper.addEventListener("change", again);
    theme.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    if (host.current !== null) size.observe(host.current);
    return () => {
      dark.removeEventListener("change", again);
      paper.removeEventListener("change", again);
      theme.disconnect();
      size.disconnect();
    };
  }, [host]);
  return count;
}

export function Chart({ name, drawn }: ChartProps) {
  const host = useRef<HTMLDivElement>(null);
  const redraws = useRedraws(host);
  useEffect(() => {
    if (host.current === null) return undefined;
    const plot = makePlot(host.current, drawn);
    return () => {
      plot.destroy();
    };
  }, [drawn, redraws]);
  return <div ref={host} class="chart" role="img" aria-label={name} />;
}
