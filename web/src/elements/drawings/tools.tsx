// Small drawings of the tools, in one stroke weight, for the questions of the set-up.

export type Tool =
  | "plate"
  | "stick"
  | "pail"
  | "jug"
  | "drum"
  | "eye"
  | "level"
  | "floor"
  | "chips"
  | "unsure"
  | "moving"
  | "box"
  | "table"
  | "thermometer"
  | "sloped"
  | "deep_end"
  | "shallow_end"
  | "stepped"
  | "standing"
  | "lying"
  | "cone"
  | "scale"
  | "gauge"
  | "from_top";

const STROKES: Readonly<Record<Tool, string>> = {
  plate:
    "M6 12h36v24H6zM12 20h24M12 28h14M9.500 15.500h.01M38.500 15.500h.01M9.500 32.500h.01M38.500 32.500h.01",
  stick: "M20 4h8v40h-8zM20 11h4M20 18h5M20 25h4M20 32h5M20 39h4",
  pail: "M7 14h34l-5 28H12zM7 14c3 -12 31 -12 34 0M10 30h28",
  jug: "M10 8h22v32H10zM32 14h8v16h-8M10 16h6M10 23h9M10 30h6M10 8l-4 -2",
  drum: "M10 8h28v34H10zM10 18h28M10 32h28M15 12.500h5",
  eye: "M24 24m-17 0a17 17 0 1 0 34 0a17 17 0 1 0 -34 0M7.500 27h33M24 14v8",
  level: "M6 26h36M17 12h14l-7 13zM18 32h12M21 37h6",
  floor:
    "M4 40h40M8 44l4 -4M18 44l4 -4M28 44l4 -4M38 44l4 -4M20 4h8v36h-8zM20 14h4M20 22h5M20 30h4",
  chips: "M4 44h40M20 4h8v26h-8zM20 12h4M20 20h5M6 42l5 -7 4 5 5 -8 5 6 5 -7 5 7 7 -5",
  unsure: "M4 44h12M32 44h12M20 4h8v24h-8zM20 12h4M20 20h5M20 35a4 4 0 1 1 5 3.500v2M25 44h.01",
  moving:
    "M4 44h40M20 4h8v40h-8zM20 12h4M20 20h5M4 32c4 -4 8 -4 12 0M32 32c4 -4 8 -4 12 0M38 24V10M38 24l-3 -5M38 24l3 -5",
  box: "M6 18h26v22H6zM6 18l10 -10h26v22l-10 10M32 18l10 -10",
  thermometer: "M20 8a4 4 0 0 1 8 0v20a8 8 0 1 1 -8 0zM24 14v20M32 12h6M32 19h4M32 26h6",
  sloped: "M6 10v28L42 26V10M6 20h36M12 31l4 -4M20 28l4 -4M28 26l3 -3",
  deep_end: "M4 12v28L44 30V12M10 6h6v32h-6zM10 14h3M10 22h3M10 30h3",
  shallow_end: "M4 12v28L44 30V12M34 6h6v25h-6zM34 12h3M34 18h3M34 24h3",
  stepped: "M6 8v32h16V28h20V8M6 16h36",
  standing: "M10 11v26c0 6 28 6 28 0V11M10 11c0 -6 28 -6 28 0c0 6 -28 6 -28 0M10 22c0 6 28 6 28 0",
  lying: "M14 12h24M14 36h24M14 12c-9 0 -9 24 0 24c9 0 9 -24 0 -24M38 12c9 0 9 24 0 24M21 24h24",
  cone: "M6 8l10 34h16L42 8M6 8h36M10 20h28",
  scale: "M8 6h12v36H8zM20 12h-5M20 20h-8M20 28h-5M20 36h-8M26 24l8 -5v10zM34 24h8",
  gauge: "M8 36a17 17 0 1 1 32 0M24 36L34 20M8 36h4M36 36h4M24 13v5M13 21l4 3",
  from_top:
    "M4 8h16M28 8h16M20 4h8v24h-8zM4 32h40M12 44h24M24 12h4M24 18h4M8 14v12M8 26l-3 -5M8 26l3 -5",
  table: "M8 8h32v32H8zM8 16h32M24 8v32M8 24h32M8 32h32",
};

export function ToolDrawing({ tool }: { readonly tool: Tool }) {
  return (
    <svg class="tool" viewBox="0 0 48 48" aria-hidden="true">
      <path d={STROKES[tool]} />
    </svg>
  );
}
