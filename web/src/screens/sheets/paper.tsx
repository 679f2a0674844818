// The pages of a sheet: on the screen as small as the screen, on paper in their own millimetres.
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { DrawSheetResult } from "../../core/messages";
import { readDrawing } from "../../elements/drawings/drawing";

interface SheetProps {
  readonly result: DrawSheetResult;
  readonly name: string;
}

/** Takes the drawing as a node: Preact sets no markup, and neither does anything else here. */
function Drawn({ drawing, size }: { readonly drawing: SVGElement; readonly size: PageSize }) {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    place.current?.replaceChildren(drawing);
  }, [drawing]);
  return <div ref={place} class="sheet-page" style={size} />;
}

type PageSize = Readonly<Record<"--sheet-width" | "--sheet-height", string>>;

/** The printer's paper and its margins, as pycore drew for them; gone again with the sheet. */
function usePaperSize({ page_width_mm, page_height_mm, width_mm }: DrawSheetResult): void {
  useLayoutEffect(() => {
    // The drawing is 1 mm smaller on each side than what lies inside the margins.
    const margin_mm = (page_width_mm - width_mm) / 2 - 1;
    const size = `${String(page_width_mm)}mm ${String(page_height_mm)}mm`;
    const rules = new CSSStyleSheet();
    rules.replaceSync(`@page { size: ${size}; margin: ${String(margin_mm)}mm; }`);
    const before = document.adoptedStyleSheets;
    document.adoptedStyleSheets = [...before, rules];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rules);
    };
  }, [page_width_mm, page_height_mm, width_mm]);
}

export function SheetPages({ result, name }: SheetProps) {
  usePaperSize(result);
  const drawings = useMemo(() => result.pages.map(readDrawing), [result]);
  const size: PageSize = {
    "--sheet-width": `${String(result.width_mm)}mm`,
    "--sheet-height": `${String(result.height_mm)}mm`,
  };
  return (
    <div class="sheet" role="img" aria-label={name}>
      {drawings.map((drawing, i) => (
        <Drawn key={i} drawing={drawing} size={size} />
      ))}
    </div>
  );
}
