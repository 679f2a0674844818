// Where the dots of concentrate stand. Each has its own fixed place as a share of the coolant, so a
// sinking level crowds the same dots and a rising one spreads them.

/** The two steps of the additive recurrence that fills a square most evenly (plastic number, powers -1 and -2). */
const STEP_X = 0.7548776662466927;
const STEP_Y = 0.5698402909980532;
const START = 0.5;

export interface Dot {
  readonly x: number;
  readonly y: number;
}

export function placeDots(count: number): readonly Dot[] {
  return Array.from({ length: count }, (_, i) => ({
    x: (START + (i + 1) * STEP_X) % 1,
    y: (START + (i + 1) * STEP_Y) % 1,
  }));
}
