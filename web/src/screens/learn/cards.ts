// The cards in their order; each has its words under its own name.
export const CARDS = [
  "strength",
  "dip",
  "factor",
  "evaporate",
  "percent",
  "top_up",
  "choose",
  "order",
  "again",
  "safety",
] as const;
export type Card = (typeof CARDS)[number];
