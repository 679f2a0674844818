// What a chart shows: numbers are those of pycore, texts are ready to be read.
import type { State } from "../../words/codes";

export interface Mark {
  readonly at_s: number;
  readonly value: number;
  readonly state?: State;
}

export interface Stretch {
  readonly from_s: number;
  readonly to_s: number;
}

export interface BandStretch extends Stretch {
  readonly low: number;
  readonly high: number;
}

export interface Bar {
  readonly at_s: number;
  readonly water: number;
  readonly concentrate: number;
}

/** What one chart shows. Texts are ready to be read; numbers are those of pycore. */
export interface Drawn {
  readonly marks: readonly Mark[];
  readonly bars: readonly Bar[];
  readonly bands: readonly BandStretch[];
  readonly rests: readonly Stretch[];
  /** After these moments the line begins anew: another charge, or a rest. */
  readonly breaks_s: readonly number[];
  readonly full: number | null;
  readonly last: string;
  /** Letters for which there is room at the right. */
  readonly margin: number;
  readonly from_s: number;
  readonly to_s: number;
  readonly height: number;
  readonly number: (value: number) => string;
  readonly day: (at_s: number) => string;
}
