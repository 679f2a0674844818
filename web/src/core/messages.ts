// Generated from shared/schema by `python3 -m web contract`. Do not edit.

export type Mishap =
  | "wrong_drum"
  | "neat_poured"
  | "lumpy_bucket"
  | "overfilled"
  | "ran_dry"
  | "split"
  | "cleaner_in_it"
  | "oil_leak";
/**
 * How a dip becomes litres. proportional: litres grow evenly to full_volume at full_depth. box: length × width. sloped_box: the floor rises by rise along its length. stepped: boxes side by side. upright_cylinder, horizontal_cylinder (flat ends) and frustum (a pointed cone has bottom_diameter 0) by their inside measures. table: pairs of depth and litres, rising, (0, 0) added when missing, each with its own standard uncertainty u where it is known. A field of another kind is refused. full_depth is the full mark, never_above_depth the mark that may not be passed with the pump stopped, rim_depth the deepest dip that can be; without it, full_depth plus 10 %, the tank's own top, or the last row of the table. These marks are depths from where the stick stands. rest: litres that the pump cannot reach. zero_offset: to be added to whatever the stick shows.
 */
export type SumpTyped = {
  kind:
    | "proportional"
    | "box"
    | "sloped_box"
    | "stepped"
    | "upright_cylinder"
    | "horizontal_cylinder"
    | "frustum"
    | "table";
  full_depth: Typed;
  /**
   * Standard uncertainty of the litres: plate 10 %, poured with a marked pail 3 %, somebody said 15 %, worked out from inside measures 5 % (common practice, no source). Rows of a table that carry their own u take its place.
   */
  volume_known_by: "plate" | "poured" | "said" | "measured";
  full_volume?: Typed;
  length?: Typed;
  width?: Typed;
  /**
   * @minItems 2
   * @maxItems 200
   */
  points?: {
    depth: Typed;
    volume: Typed;
    u?: Typed;
  }[];
  rim_depth?: Typed;
  never_above_depth?: Typed;
  rise?: Typed;
  /**
   * End of the sloped floor on which the stick stands.
   */
  dipped_end?: "deep" | "shallow";
  /**
   * Boxes side by side, the deepest first: height of each floor above the deepest one (0 for the first, never falling), inside length and width.
   *
   * @minItems 2
   * @maxItems 20
   */
  steps?: {
    floor: Typed;
    length: Typed;
    width: Typed;
  }[];
  diameter?: Typed;
  bottom_diameter?: Typed;
  top_diameter?: Typed;
  height?: Typed;
  /**
   * @maxItems 20
   */
  obstacles?: ObstacleTyped[];
  /**
   * Coolant in pipes, filters, conveyor or a second tank, which does not show on the stick while the pump runs. drains_back: it runs back into the sump when the pump stops. Without u its standard uncertainty is 25 % (common practice, no source).
   */
  hidden?: {
    volume: Typed;
    u?: Typed;
    drains_back: boolean;
  };
  rest?: Typed;
  /**
   * bottom (without it): the stick shows the depth from the floor. top: it shows the empty height below a fixed point, which lies reference_height above the floor.
   */
  dip_from?: "bottom" | "top";
  reference_height?: Typed;
  zero_offset?: Typed;
  /**
   * How this machine's level is usually read: depth (without it), litres or gallons of a printed scale, or the share of a rough gauge.
   */
  read_as?: "depth" | "volume" | "gauge";
  /**
   * Pump state in which level and marks are true: stopped and drained back (without it), or running.
   */
  level_true?: "stopped" | "running";
  /**
   * Minutes from the pump's stop until the level is true.
   */
  wait_min?: number;
  /**
   * Minutes that the pump runs before the second reading; by the size of the circuit without it.
   */
  mix_min?: number;
  /**
   * A screen or a wall parts a dirty side from a clean one: the page asks for a dip on both.
   */
  divided?: boolean;
};
/**
 * Unit of a typed or shown number. "1" is a plain number, such as a fluid's factor.
 */
export type Unit =
  | "mm"
  | "cm"
  | "m"
  | "in"
  | "ft"
  | "L"
  | "mL"
  | "US gal"
  | "US qt"
  | "US pt"
  | "US fl oz"
  | "imp gal"
  | "imp qt"
  | "imp pt"
  | "imp fl oz"
  | "°C"
  | "°F"
  | "kg"
  | "lb"
  | "%"
  | "Brix"
  | "nD"
  | "mg/L"
  | "mg/L CaCO₃"
  | "°dH"
  | "°fH"
  | "gpg"
  | "mmol/L"
  | "CFU/mL"
  | "kg/L"
  | "lb/US gal"
  | "1";
export type VolumeUnit =
  | "L"
  | "mL"
  | "US gal"
  | "US qt"
  | "US pt"
  | "US fl oz"
  | "imp gal"
  | "imp qt"
  | "imp pt"
  | "imp fl oz";
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";
/**
 * One refractometer. resolution: distance of two marks or digits; lowest, highest: ends of its scale; all in its own unit.
 */
export type InstrumentTyped = {
  /**
   * What the scale is in. An instrument that shows per cent holds a factor of its own, which is never applied a second time.
   */
  shows: "brix" | "refractive_index" | "per_cent";
  name?: string;
  kind?: "optical" | "digital";
  factor_inside?: Typed;
  /**
   * Automatic temperature compensation; left out where nobody knows.
   */
  compensation?: "automatic" | "none";
  resolution?: Typed;
  lowest?: Typed;
  highest?: Typed;
  zero?: ZeroTyped;
};
/**
 * alike: weak with room, all buckets alike. rich: too strong with room. full: weak and full, so that coolant has to come out. band: the strongest mix does not reach the aim, only the band.
 */
export type PracticeLevel = "alike" | "rich" | "full" | "band";
/**
 * Draws one sheet. measured_100_mm: how long the 100 mm line of an uncorrected print came out; the sheet then makes up for it. buckets: what this shop mixes often; without it, a full bucket at the aim.
 */
export type DrawSheetBody = {
  kind: "dip_scale" | "bucket_scale" | "machine_card" | "log_sheet" | "recipe_slip";
  paper: "A4" | "Letter";
  machine?: MachineTyped;
  measured_100_mm?: Typed;
  /**
   * The machine's short code as typed.
   */
  code?: string;
  /**
   * Where the app lives, without a fragment; the square code carries it with the short code as its fragment.
   */
  address?: string;
  circuit_volume?: Typed;
  /**
   * Day on which the tank was measured, year-month-day.
   */
  calibrated_on?: string;
  pail_shape?: PailShapeTyped;
  /**
   * @minItems 1
   * @maxItems 3
   */
  buckets?: UsualBucketTyped[];
  recipe?: SlipRecipe;
  /**
   * Time of the check as the page wrote it.
   */
  when?: string;
  /**
   * All sentences of sheets in another language, by the keys of shared/words without their prefix; English without it.
   */
  words?: {
    [k: string]: string;
  };
  decimal_sign?: "." | ",";
};
/**
 * A round pail with straight walls, from its inside measures or from two measured fills, the lower one first; the scale then ends at the second.
 */
export type PailShapeTyped = {
  kind: "diameters" | "fills";
  floor_diameter?: Typed;
  brim_diameter?: Typed;
  height?: Typed;
  /**
   * @minItems 2
   * @maxItems 2
   */
  fills?: FillTyped[];
};
/**
 * Local time with its offset, such as 2026-11-25T06:30:00+01:00.
 */
export type Moment = string;
/**
 * 128 random bits, made when the form opens, so that a second try is the same entry.
 */
export type EntryId = string;
/**
 * What speaks for a clean-out, the strongest first; empty where nothing does.
 */
export type CleanOutReasons = (
  "germs_act" | "germs_review" | "ph_dropped_far" | "smells" | "old"
)[];
/**
 * SHA-256 of a line without its last field, hash.
 */
export type EntryHash = string;
/**
 * Four characters and a check character, as on the label.
 */
export type ShortCode = string;
export type Remarks = string;
export type ErrorCode =
  | "not_json"
  | "duplicate_key"
  | "not_finite"
  | "too_large"
  | "too_deep"
  | "unknown_version"
  | "unknown_op"
  | "missing"
  | "unknown_field"
  | "wrong_type"
  | "too_long"
  | "too_few"
  | "too_many"
  | "not_allowed"
  | "out_of_range"
  | "empty"
  | "not_a_number"
  | "not_whole"
  | "two_separators"
  | "thousands"
  | "missing_unit"
  | "ambiguous_unit"
  | "unknown_unit"
  | "wrong_dimension"
  | "order"
  | "too_uncertain"
  | "not_rising"
  | "not_for_kind"
  | "obstacle_too_large"
  | "pours_contradict"
  | "screen_blocked"
  | "mark_above_bucket"
  | "no_factor"
  | "off_scale"
  | "not_a_date"
  | "neat_oil"
  | "wrong_form"
  | "seal_missing"
  | "seal_broken"
  | "file_empty"
  | "file_foreign"
  | "file_newer"
  | "not_a_code"
  | "code_mismatch"
  | "internal";
export type ShortText = string;
export type ShortName = string;
export type ClockFlag = "back" | "future" | "zone";
export type EntryKind =
  | "check"
  | "plan"
  | "pour"
  | "recheck"
  | "clean_out"
  | "additive"
  | "unknown_addition"
  | "machine_set"
  | "fluid_set"
  | "instrument_set"
  | "calibration"
  | "shop_set"
  | "machine_state"
  | "note"
  | "correction"
  | "withdrawal"
  | "decision";
/**
 * Several at once; normal says that somebody looked and saw nothing odd.
 */
export type Look =
  | "floating_oil"
  | "foam"
  | "split"
  | "cream"
  | "grey_or_brown"
  | "smell"
  | "slime"
  | "rust"
  | "chips_or_sludge"
  | "skin_complaint"
  | "level_odd"
  | "normal";
/**
 * The chance to end inside the band in words: above 0.9, above 0.66, above 0.33, above 0.1, and below (likelihood scale of the IPCC's guidance note of 2010, table 1).
 */
export type Chance = "very_likely" | "likely" | "even" | "unlikely" | "very_unlikely";
/**
 * @maxItems 200
 */
export type BucketRows = BucketRow[];
export type Reason = string;
/**
 * One answer.
 */
export type DeskReply =
  | {
      v: 1;
      id: string;
      ok: true;
      result: {};
    }
  | {
      v: 1;
      id: string;
      ok: false;
      error: DeskError;
    };

/**
 * What can be asked: the body of each question and the result of its answer.
 */
export interface Operations {
  advise_mishap: {
    body: AdviseMishapBody;
    result: AdviseMishapResult;
  };
  assess_sump: {
    body: AssessSumpBody;
    result: AssessSumpResult;
  };
  calibrate_sump: {
    body: CalibrateSumpBody;
    result: CalibrateSumpResult;
  };
  deal_practice: {
    body: DealPracticeBody;
    result: DealPracticeResult;
  };
  describe: {
    body: DescribeBody;
    result: DescribeResult;
  };
  draw_sheet: {
    body: DrawSheetBody;
    result: DrawSheetResult;
  };
  due_checks: {
    body: DueChecksBody;
    result: DueChecksResult;
  };
  fit_factor: {
    body: FitFactorBody;
    result: FitFactorResult;
  };
  fold_log: {
    body: FoldLogBody;
    result: FoldLogResult;
  };
  handover: {
    body: HandoverBody;
    result: HandoverResult;
  };
  hold_check: {
    body: HoldCheckBody;
    result: HoldCheckResult;
  };
  judge_look: {
    body: JudgeLookBody;
    result: JudgeLookResult;
  };
  judge_practice: {
    body: JudgePracticeBody;
    result: JudgePracticeResult;
  };
  look_back: {
    body: LookBackBody;
    result: LookBackResult;
  };
  make_code: {
    body: MakeCodeBody;
    result: MakeCodeResult;
  };
  merge_logs: {
    body: MergeLogsBody;
    result: MergeLogsResult;
  };
  plan_charge: {
    body: PlanChargeBody;
    result: PlanCheckResult;
  };
  plan_check: {
    body: PlanCheckBody;
    result: PlanCheckResult;
  };
  plan_holding: {
    body: PlanHoldingBody;
    result: PlanHoldingResult;
  };
  plan_recipe: {
    body: PlanRecipeBody;
    result: PlanRecipeResult;
  };
  read_code: {
    body: ReadCodeBody;
    result: ReadCodeResult;
  };
  read_export: {
    body: ReadExportBody;
    result: ReadExportResult;
  };
  read_fluid: {
    body: ReadFluidBody;
    result: ReadFluidResult;
  };
  read_machine: {
    body: ReadMachineBody;
    result: ReadMachineResult;
  };
  read_quantity: {
    body: ReadQuantityBody;
    result: ReadQuantityResult;
  };
  read_water: {
    body: ReadWaterBody;
    result: ReadWaterResult;
  };
  recheck: {
    body: RecheckBody;
    result: RecheckResult;
  };
  trend: {
    body: TrendBody;
    result: TrendResult;
  };
  try_sump: {
    body: TrySumpBody;
    result: TrySumpResult;
  };
  write_csv: {
    body: WriteCsvBody;
    result: WriteCsvResult;
  };
  write_export: {
    body: WriteExportBody;
    result: WriteExportResult;
  };
}
/**
 * Without fluid_type the rows of every type are told.
 */
export interface AdviseMishapBody {
  mishap: Mishap;
  fluid_type?: "soluble_oil" | "semi_synthetic" | "synthetic";
  /**
   * @maxItems 10
   */
  metals?: ("steel" | "cast_iron" | "aluminium" | "copper" | "titanium" | "magnesium" | "other")[];
}
/**
 * state and reason are an offer; record is the kind of entry that fits.
 */
export interface AdviseMishapResult {
  rows: {
    code: string;
    part: "stop" | "never" | "do" | "ask" | "safety";
    source: string;
  }[];
  state: "in_use" | "watch" | "on_hold" | "stopped";
  reason:
    | "wrong_drum"
    | "split"
    | "smell"
    | "leak"
    | "water_getting_in"
    | "overfilled"
    | "ran_dry"
    | "lumpy_mix"
    | "cleaner_in_it"
    | "hydraulic_oil"
    | "neat_concentrate"
    | "lab_sample"
    | "dose_in_progress"
    | "holiday"
    | "repair"
    | "other";
  record: "note" | "additive" | "unknown_addition";
}
/**
 * Dip and reading, either alone or both.
 */
export interface AssessSumpBody {
  sump: SumpTyped;
  fluid?: FluidTyped;
  target?: TargetTyped;
  units?: Units;
  dip?: DipTyped;
  reading?: ReadingTyped;
  instrument?: InstrumentTyped;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  now?: string;
}
/**
 * What a person typed and the unit that stood beside the field. A unit typed into the text wins; a text without one takes this unit; with neither it is refused.
 */
export interface Typed {
  /**
   * Just what the person typed, untouched.
   */
  text: string;
  unit?: Unit;
}
/**
 * Something that stands in the liquid, by heights above the deepest floor; without to_depth it reaches above the rim. Its area by length and width, by diameter, or by the volume it displaces between the two heights.
 */
export interface ObstacleTyped {
  from_depth: Typed;
  to_depth?: Typed;
  length?: Typed;
  width?: Typed;
  diameter?: Typed;
  volume?: Typed;
}
/**
 * factor: strength in per cent by volume for one Brix on the glass, or the sheet's number with its factor_direction; a chart instead of it is factor_chart. Without either there is no per cent. factor_u: its own standard uncertainty, before factor_known_by. factor_offset: what a mix of nothing reads once the zero is taken off, from fit_factor. zero: what the instrument shows in water, where there is no record of the instrument. titration_factor, split_factor: per cent for one drop, millilitre or division of the second method. target, strong, weak: as the fluid's sheet has them; the machine's own stand beside. Dates and shelf life are those of the drum in use.
 */
export interface FluidTyped {
  /**
   * neat_oil is refused: no water-mixed fluid belongs in such a machine.
   */
  type: "soluble_oil" | "semi_synthetic" | "synthetic" | "neat_oil";
  name?: string;
  factor?: Typed;
  /**
   * Relative standard uncertainty 3, 2, 10 % (common practice, no source).
   */
  factor_known_by?: "sheet" | "own_jugs" | "old_fluid";
  zero?: Typed;
  /**
   * How the sheet uses its number: reading × factor, or reading ÷ factor. Without it the number is per cent for one Brix.
   */
  factor_direction?: "multiply" | "divide";
  factor_u?: Typed;
  factor_offset?: Typed;
  /**
   * A printed chart instead of a factor: per cent and what that mix reads in Brix, rising; (0, 0) is added when missing.
   *
   * @minItems 1
   * @maxItems 20
   */
  factor_chart?: {
    strength: Typed;
    reading: Typed;
  }[];
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  factor_on?: string;
  titration_factor?: Typed;
  split_factor?: Typed;
  /**
   * @maxItems 10
   */
  metals?: ("steel" | "cast_iron" | "aluminium" | "copper" | "titanium" | "magnesium" | "other")[];
  made_for_magnesium?: boolean;
  batch?: string;
  target?: TargetTyped;
  strong?: Typed;
  weak?: Typed;
  first_fill_ph?: Typed;
  water_limits?: WaterLimitsTyped;
  density?: Typed;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  delivered_on?: string;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  opened_on?: string;
  shelf_life_months?: number;
}
export interface TargetTyped {
  low: Typed;
  aim: Typed;
  high: Typed;
}
/**
 * Hardness that the mixing water may have, and whose advice that is.
 */
export interface WaterLimitsTyped {
  scheme: string;
  low: Typed;
  high: Typed;
}
/**
 * One unit per tool: a US gallon plate, an inch rule, a litre pail and a millilitre jug at one machine are normal.
 */
export interface Units {
  plate: VolumeUnit;
  stick: LengthUnit;
  pail: VolumeUnit;
  jug: VolumeUnit;
}
/**
 * depth is what was read: a number of the stick, litres or gallons of a printed scale, or a share of a gauge from 0 to 1, such as 3/4. gauge_to: the level stands between the two shares. clean_side: the same dip on the other side of a divided tank; more than 20 mm apart at rest, a blocked screen is suspected and no recipe is given (common practice, no source).
 */
export interface DipTyped {
  depth: Typed;
  /**
   * Standard uncertainty 2, 3, 8, 15 mm, and 15 mm for unsure, since it may have been chips (common practice, no source).
   */
  how?: "hard_floor" | "through_slot" | "running" | "chips" | "unsure";
  u?: Typed;
  /**
   * What the number in depth is; without it, what the machine's sump says.
   */
  read_as?: "depth" | "volume" | "gauge";
  gauge_to?: Typed;
  clean_side?: Typed;
  /**
   * Pump state at this dip; without it, the one in which the machine's level is true.
   */
  pump?: "stopped" | "running";
  /**
   * false: dipped before the coolant had drained back. Standard uncertainty as with the pump running, 8 mm (common practice, no source).
   */
  waited?: boolean;
}
/**
 * In the unit of the instrument's scale, Brix without an instrument. temperature: of the prism, half a minute after the drop. diluted: parts of water to one part of the sample, 1 for one to one; the page sends what was read, not the doubled number.
 */
export interface ReadingTyped {
  shows: Typed;
  /**
   * Standard uncertainty 0.1, 0.2, 0.4, 0.8 Brix (common practice, no source).
   */
  how?: "digital" | "optical" | "optical_oily" | "blurred";
  u?: Typed;
  /**
   * Further readings of the same sample; the mean counts.
   *
   * @minItems 1
   * @maxItems 9
   */
  again?: Typed[];
  temperature?: Typed;
  diluted?: Typed;
}
/**
 * The zero in water: what it showed, when, how warm, with which water.
 */
export interface ZeroTyped {
  shows: Typed;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  on?: string;
  temperature?: Typed;
  water?: "demineralised" | "softened" | "mains";
}
export interface AssessSumpResult {
  notes: (
    | "no_factor"
    | "above_full_mark"
    | "may_be_leaner"
    | "screen_blocked"
    | "not_waited"
    | "other_pump_state"
    | "drain_back_counted"
    | "below_rest"
    | "rough_level"
    | "zero_old"
    | "zero_age_unknown"
    | "zero_not_taken"
    | "temperature_not_known"
    | "compensation_not_known"
    | "beyond_chart"
    | "no_fluid_factor"
    | "magnesium"
    | "demineralised_first_fill"
  )[];
  level?: Level;
  strength?: Strength;
  section?: Section;
  doubts?: Doubt[];
}
export interface Level {
  depth_mm: Measured;
  volume_l: Measured;
  full_volume_l: number;
  /**
   * Litres up to the full mark; negative above it.
   */
  room_l: number;
  litres_per_mm: number;
  /**
   * one and one_holds: one unit of the stick is about so many litres at this level. circuit: what is in sump and pipes together.
   */
  shown: {
    depth: Shown;
    volume: Shown;
    volume_u: Shown;
    room: Shown;
    full_volume: Shown;
    full_depth: Shown;
    one?: Shown;
    one_holds?: Shown;
    circuit?: Shown;
    over?: Shown;
  };
  circuit_l?: Measured1;
  /**
   * Litres above what the pump cannot reach; negative when it sucks air.
   */
  pumpable_l?: number;
  /**
   * How much higher the dirty side of a divided tank stands than the clean side.
   */
  sides_mm?: number;
}
/**
 * A measured value with its standard uncertainty (one sigma).
 */
export interface Measured {
  value: number;
  /**
   * Standard uncertainty, same unit as value.
   */
  u: number;
}
/**
 * A number rounded for people in the unit of the tool. The page only sets the decimal sign and the space.
 */
export interface Shown {
  value: number;
  decimals: number;
  unit: Unit;
  fraction?: Fraction;
}
/**
 * Mixed fraction, reduced.
 */
export interface Fraction {
  whole: number;
  numerator: number;
  denominator: number;
}
/**
 * A measured value with its standard uncertainty (one sigma).
 */
export interface Measured1 {
  value: number;
  /**
   * Standard uncertainty, same unit as value.
   */
  u: number;
}
/**
 * Without a factor there is no strength_pct. reading_brix is what was read, the mean where there were several; corrected_brix what the factor is applied to, where that is another number: zero and temperature taken off, dilution undone. cures: what helps against a blurred line, least work first.
 */
export interface Strength {
  reading_brix: Measured;
  /**
   * worked_out: reading times factor as they stand here, digit for digit; absent where that needs more digits, then strength is about it.
   */
  shown: {
    reading: Shown;
    factor?: Shown;
    strength?: Shown;
    low?: Shown;
    high?: Shown;
    mean?: Shown;
    spread?: Shown;
    zero?: Shown;
    temperature_change?: Shown;
    corrected?: Shown;
    worked_out?: Shown;
  };
  strength_pct?: Measured;
  /**
   * Against the target band; its edges belong to the band.
   */
  state?: "weak" | "in_range" | "strong";
  corrected_brix?: Measured;
  spread_brix?: number;
  temperature_change_brix?: number;
  cures?: (
    "filter_the_sample" | "read_the_middle" | "dilute_and_double" | "use_the_second_method"
  )[];
}
/**
 * The section drawing. Its height runs from the deepest floor to the rim.
 */
export interface Section {
  /**
   * Liquid surface as a share of the drawn height (rim = 1).
   */
  level: number;
  /**
   * Full mark as a share of the drawn height.
   */
  full_mark: number;
  /**
   * One dot is half a per cent of the full sump of concentrate.
   */
  dots?: number;
  drawing?: Drawing;
}
/**
 * The tank's own outline, the same at every level.
 */
export interface Drawing {
  /**
   * Walls from floor (0) to rim (1), as shares of the widest place; straight between two of them, two at the same height are a step.
   */
  outline: {
    height_share: number;
    left_share: number;
    right_share: number;
  }[];
  /**
   * What stands in the liquid; where it stands is not known.
   */
  blocks: {
    from_share: number;
    to_share: number;
    width_share: number;
  }[];
  /**
   * Height at which the stick stands.
   */
  zero_share: number;
  /**
   * Width over height in true proportions; missing where no width is known.
   */
  aspect_share?: number;
}
/**
 * Possible but unusual: the page asks once, keeps what was typed and goes on. usual_low and usual_high are in the unit of got. unusual: outside what is usual. uneven_step: a pour test's dip does not fit its neighbours. unlike_last: far from the last reading, nothing poured since; unlike_last_poured: the same with what was poured; unlike_target: a first reading far from the aim. last, last_at: the earlier number. slip: the number with its decimal sign moved, where only that one is plausible.
 */
export interface Doubt {
  path: string;
  code:
    | "unusual"
    | "unusual_level"
    | "uneven_step"
    | "readings_scatter"
    | "factor_moved"
    | "factor_inside_differs"
    | "chart_bent"
    | "jug_stands_out"
    | "jugs_scatter"
    | "range_small"
    | "unlike_last"
    | "unlike_last_poured"
    | "unlike_target";
  got: Shown;
  usual_low: number;
  usual_high: number;
  last?: Shown;
  last_at?: string;
  slip?: Shown;
}
/**
 * What was poured and dipped, on one day or on many; together at least one pour.
 */
export interface CalibrateSumpBody {
  full_depth: Typed;
  rim_depth?: Typed;
  /**
   * Whether the sump was empty before the first step. With a rest of unknown volume, start_depth is its dip.
   */
  start?: "empty" | "rest";
  start_depth?: Typed;
  /**
   * One after the other without taking anything out: what was poured, and the dip afterwards.
   *
   * @maxItems 60
   */
  steps?: {
    poured: Typed;
    depth: Typed;
    /**
     * When it was dipped, ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00. Kept for the log; nothing is worked out from it.
     */
    at?: string;
  }[];
  /**
   * Top-ups on whatever day: dip before, what was poured, dip after.
   *
   * @maxItems 60
   */
  pairs?: {
    before: Typed;
    poured: Typed;
    after: Typed;
  }[];
  /**
   * Relative standard uncertainty of the vessel's mark, the same in every pour: as moulded 3 %, checked against a scale or a better measure 0.5 % (common practice, no source).
   */
  vessel_known_by?: "marks" | "checked";
  how?: "hard_floor" | "through_slot" | "running" | "chips" | "unsure";
  dip_u?: Typed;
  maker_volume?: Typed;
  dip_from?: "bottom" | "top";
  reference_height?: Typed;
  zero_offset?: Typed;
  units?: Units;
}
/**
 * sump is ready to be stored as a machine's own: a table whose rows carry their uncertainty.
 */
export interface CalibrateSumpResult {
  /**
   * few_steps: fewer than four. not_near_full: no dip near the full mark. rest_estimated: what was there before the first pour is worked out. poorly_known: a stretch without a dip. maker_differs: the maker's figure lies outside both likely ranges.
   */
  notes: ("few_steps" | "not_near_full" | "rest_estimated" | "poorly_known" | "maker_differs")[];
  sump: SumpTyped;
  rows: CalibratedRow[];
  steps: CalibratedStep[];
  /**
   * Stretches of more than a quarter of the full depth without a dip.
   */
  gaps: {
    from_depth: Shown;
    to_depth: Shown;
  }[];
  full_volume_l: Measured;
  rest_l?: Measured;
  /**
   * Maker's figure less what was found.
   */
  maker_difference_l?: number;
  shown: {
    full_volume: Shown;
    full_volume_u: Shown;
    one: Shown;
    one_holds: Shown;
    rest?: Shown;
    rest_u?: Shown;
    maker_volume?: Shown;
    maker_difference?: Shown;
  };
  drawing: Drawing;
  doubts: Doubt[];
}
export interface CalibratedRow {
  depth_mm: number;
  volume_l: Measured;
  poorly_known: boolean;
  shown: {
    depth: Shown;
    volume: Shown;
    volume_u: Shown;
  };
}
/**
 * A step with all that was poured up to it and what the curve says at its dip.
 */
export interface CalibratedStep {
  depth_mm: number;
  poured_l: number;
  volume_l: number;
  shown: {
    depth: Shown;
    poured: Shown;
    volume: Shown;
  };
}
/**
 * An invented sump to practise on. The same number and level always deal the same one; the page draws the number.
 */
export interface DealPracticeBody {
  level: PracticeLevel;
  number: Typed;
}
/**
 * check is a whole check as it would have been typed; its machine's name is its kind. steps: what is worked out by hand, in order.
 */
export interface DealPracticeResult {
  level: PracticeLevel;
  number: number;
  kind:
    "wheel_lathe" | "axle_grinder" | "boring_mill" | "drill_line" | "band_saw" | "milling_machine";
  check: PlanCheckBody;
  steps: ("volume" | "strength" | "room" | "take_out" | "top_up" | "pours")[];
}
/**
 * A whole check just as it was typed. aim and fill_to_depth replace the machine's own for this once; concentrate_at_hand limits the recipe; hidden_strength is the strength of what does not show on the stick, where it stood still since the last mixing. second: the same coolant by another method; now: the time of the check, which the age of the zero is counted to.
 */
export interface PlanCheckBody {
  machine: MachineTyped;
  dip: DipTyped;
  reading: ReadingTyped;
  aim?: Typed;
  fill_to_depth?: Typed;
  concentrate_at_hand?: Typed;
  hidden_strength?: Typed;
  second?: SecondTyped;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  now?: string;
}
export interface MachineTyped {
  name: string;
  sump: SumpTyped;
  fluid: FluidTyped;
  target: TargetTyped;
  mixing: MixingTyped;
  bucket: BucketTyped;
  units: Units;
  pail?: PailTyped;
  ways?: WaysTyped;
  instrument?: InstrumentTyped;
  water?: WaterTyped;
  /**
   * Where buckets are poured in at this machine, in the shop's own words.
   */
  pour_here?: string;
}
export interface MixingTyped {
  strong: Typed;
  weak: Typed;
  closeness: Typed;
}
export interface BucketTyped {
  usable: Typed;
  water_mark: Typed;
  jug_mark: Typed;
}
/**
 * Lowest marks and the size of the jug; concentrate by the jug or by the pail's own marks.
 */
export interface PailTyped {
  first_mark?: Typed;
  jug_first_mark?: Typed;
  jug_size?: Typed;
  measure_by?: "jug" | "pail";
}
/**
 * What this shop allows and knows: taking coolant out, the sump's own fluid as carrier, litres a day that leave with parts, whole buckets one person carries, the heaviest of them, a mixing unit.
 */
export interface WaysTyped {
  draw_off?: boolean;
  own_fluid?: boolean;
  carry_out?: Typed;
  most_buckets?: Typed;
  heaviest?: Typed;
  unit?: UnitTyped;
}
/**
 * A mixing unit (proportioner): its range and the step of its setting.
 */
export interface UnitTyped {
  lowest: Typed;
  highest: Typed;
  step: Typed;
}
export interface WaterTyped {
  name?: string;
  kind: "demineralised" | "softened" | "mains";
  hardness?: Typed;
  chloride?: Typed;
  nitrate?: Typed;
}
/**
 * Drops or millilitres of a titration, divisions of an acid split. factor: per cent for one of them, else the fluid's own. u: standard uncertainty of shows, else half a drop or division.
 */
export interface SecondTyped {
  method: "acid_split" | "titration";
  shows: Typed;
  factor?: Typed;
  u?: Typed;
}
/**
 * Asks for versions and operations.
 */
export interface DescribeBody {}
export interface DescribeResult {
  pycore: string;
  python: string;
  schema: number;
  operations: string[];
  quantities: string[];
  units: string[];
}
/**
 * A fill of the pail: its depth, measured upright, and its volume.
 */
export interface FillTyped {
  depth: Typed;
  volume: Typed;
}
/**
 * A bucket that is mixed often.
 */
export interface UsualBucketTyped {
  water: Typed;
  concentrate: Typed;
}
/**
 * A recipe just as it was shown: numbers as shown, cautions as whole sentences.
 */
export interface SlipRecipe {
  depth?: Shown;
  reading?: Shown;
  now_strength?: Shown;
  now_volume?: Shown;
  take_out?: Shown;
  /**
   * @maxItems 20
   */
  pours: PourShown[];
  strength: Shown;
  low: Shown;
  high: Shown;
  volume: Shown;
  /**
   * @maxItems 16
   */
  cautions: string[];
}
export interface PourShown {
  count: number;
  water: Shown;
  concentrate: Shown;
  total: Shown;
  strength: Shown;
  weight: Shown;
  /**
   * Water, or own fluid, as a share of the usable bucket.
   */
  water_share: number;
  concentrate_share: number;
  fluid?: Shown;
  /**
   * The concentrate as so many full jugs and a rest.
   */
  jugs?: {
    count: number;
    rest: Shown;
  };
  pail_mark?: Shown;
  kind?: "own_fluid" | "ready_mix";
}
/**
 * The sheet, to be printed on paper of page_width_mm by page_height_mm with 10 mm margins and without any fitting.
 */
export interface DrawSheetResult {
  kind: "dip_scale" | "bucket_scale" | "machine_card" | "log_sheet" | "recipe_slip";
  paper: "A4" | "Letter";
  page_width_mm: number;
  page_height_mm: number;
  width_mm: number;
  height_mm: number;
  /**
   * One SVG file for each page, width_mm by height_mm.
   */
  pages: string[];
  print_scale: number;
  /**
   * Whether the measured line is within 1 mm of 100 mm; only with measured_100_mm.
   */
  line_passes?: boolean;
  doubts: Doubt[];
}
/**
 * now is the device's clock.
 */
export interface DueChecksBody {
  /**
   * Rows of the store; of each machine suffice the latest reading, clean-out, state, set-up, pH and dip slide, the two latest smells and the first pH of the charge, with the facts of the shop.
   *
   * @maxItems 50000
   */
  lines: string[];
  now: Moment;
}
/**
 * One for each machine that somebody has set up.
 */
export interface DueChecksResult {
  checks: CheckDue[];
}
/**
 * When a machine's next check is due by the shop's interval, and its clean-out. clean_out: what speaks for one, also while the machine rests; empty where that is not enough. read_at, due_s: absent without a reading of this charge; then it is due at once. resting: the machine rests, and nothing is due.
 */
export interface CheckDue {
  machine: EntryId;
  name: string;
  due: boolean;
  resting: boolean;
  every_d: number;
  read_at?: Moment;
  /**
   * Seconds since 1970.
   */
  due_s?: number;
  clean_out: CleanOutReasons;
  clean_out_due: boolean;
}
/**
 * Two to five fresh mixes, each read once with the same freshly zeroed instrument. on: the day of it.
 */
export interface FitFactorBody {
  /**
   * @minItems 2
   * @maxItems 5
   */
  jugs: JugTyped[];
  /**
   * syringe: by syringe or scale, 0.5 % of each amount; jug: by the jug's marks, 2 % (standard uncertainties, common practice, no source).
   */
  measured_with: "syringe" | "jug";
  how?: "digital" | "optical" | "optical_oily" | "blurred";
  instrument?: InstrumentTyped;
  fluid_type?: "soluble_oil" | "semi_synthetic" | "synthetic";
  last_factor?: Typed;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  on: string;
}
export interface JugTyped {
  water: Typed;
  concentrate: Typed;
  shows: Typed;
}
export interface FitFactorResult {
  on: string;
  /**
   * with_offset when the offset of the free line lies more than 2.576 standard uncertainties (1 %) away from 0, that of the zero included; from three jugs on.
   */
  model: "through_zero" | "with_offset";
  factor: Measured;
  offset_brix?: Measured;
  /**
   * 95 % interval of the factor; not the same to both sides.
   */
  interval: {
    low: number;
    high: number;
  };
  jugs: FittedJug[];
  /**
   * Fields for the fluid's record, ready to be kept.
   */
  keep: {
    factor: Typed;
    factor_u: Typed;
    factor_offset?: Typed;
    factor_known_by: string;
    factor_on: string;
  };
  shown: {
    factor: Shown;
    low: Shown;
    high: Shown;
    five_reads: Shown;
    offset?: Shown;
  };
  doubts: Doubt[];
}
/**
 * One jug beside the fitted line; reading_brix has the zero taken off.
 */
export interface FittedJug {
  strength_pct: Measured;
  reading_brix: Measured;
  off_brix: number;
  /**
   * off_brix in its own standard uncertainties.
   */
  score: number;
  shown: {
    strength: Shown;
    reading: Shown;
    expected: Shown;
    off: Shown;
  };
}
/**
 * The present state of everything in a log. now is the device's clock.
 */
export interface FoldLogBody {
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  /**
   * @maxItems 1000
   */
  heads?: LogHead[];
  now: Moment;
}
/**
 * The last line of a log that somebody knows of.
 */
export interface LogHead {
  log: EntryId;
  count: number;
  head: EntryHash;
}
export interface FoldLogResult {
  machines: MachineNow[];
  fluids: FluidNow[];
  instruments: InstrumentNow[];
  counts: LogCounts;
  report: LogReport;
  who?: WhoNow;
  limits?: LimitsNow;
}
/**
 * One machine. A part that nobody has entered is absent. name is empty without a set-up.
 */
export interface MachineNow {
  machine: EntryId;
  name: string;
  setup?: SetupNow;
  state?: StateNow;
  level?: LevelNow;
  strength?: StrengthNow;
  checked?: LatestEntry;
  open_pours: OpenPour[];
  recheck?: DueRecheck;
  /**
   * What was poured after the last dip or reading. Litres are those of the buckets that are known; unknown_buckets are not in them.
   */
  since_measured: {
    pours: number;
    buckets: number;
    unknown_buckets: number;
    unknown_additions: number;
    water_l: number;
    concentrate_l: number;
  };
  conflicts: EntryId[];
}
export interface SetupNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  machine: MachineTyped;
  code?: ShortCode;
}
export interface StateNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  state: MachineStateContent;
  by: string;
}
/**
 * on_hold: somebody has hung a tag on it, until a moment or until somebody takes it off. A tag is not lifted by the clock. Who: by, beside the body.
 */
export interface MachineStateContent {
  state: "in_use" | "watch" | "on_hold" | "stopped" | "clean_out" | "out_of_service" | "shutdown";
  reason?:
    | "wrong_drum"
    | "split"
    | "smell"
    | "leak"
    | "water_getting_in"
    | "overfilled"
    | "ran_dry"
    | "lumpy_mix"
    | "cleaner_in_it"
    | "hydraulic_oil"
    | "neat_concentrate"
    | "lab_sample"
    | "dose_in_progress"
    | "holiday"
    | "repair"
    | "other";
  until?: Moment;
  remarks?: Remarks;
}
/**
 * The last dip by the set-up of its day; trouble says why there is no level.
 */
export interface LevelNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  level?: Level;
  trouble?: DeskError;
}
/**
 * Why a request was refused.
 */
export interface DeskError {
  code: ErrorCode;
  /**
   * Where in the request, such as body.sump.points[2].depth
   */
  path: string;
  /**
   * What stood there; null when nothing did.
   */
  got: unknown;
  limit: Limit;
  message: string;
}
/**
 * What is allowed: minimum, maximum (may be reached), above, below (may not), unit, allowed (list), type, most.
 */
export interface Limit {
  minimum?: number;
  maximum?: number;
  above?: number;
  below?: number;
  unit?: string;
  allowed?: string[];
  type?: string;
  most?: number;
  least?: number;
}
/**
 * The last reading by the set-up of its day.
 */
export interface StrengthNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  strength?: Strength;
  trouble?: DeskError;
}
/**
 * The latest entry of its kind. certain: no other one can be later; others: those that may be. age_d may be negative where a clock was wrong.
 */
export interface LatestEntry {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
}
/**
 * plan is empty for a top-up without a recipe.
 */
export interface OpenPour {
  plan: string;
  since: Moment;
  buckets_planned: number;
  buckets_poured: number;
  pours: EntryId[];
}
/**
 * resting: the machine rests, and so does the reading.
 */
export interface DueRecheck {
  pour: EntryId;
  due_at: Moment;
  overdue: boolean;
  resting: boolean;
}
export interface FluidNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  fluid: FluidSetContent;
}
/**
 * A fluid of the shop; lot and opening date are those of the drum in use.
 */
export interface FluidSetContent {
  fluid: EntryId;
  definition: FluidTyped;
  target?: TargetTyped;
  mixing?: MixingTyped;
  lot?: ShortText;
  opened?: string;
  remarks?: Remarks;
}
export interface InstrumentNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  instrument: InstrumentSetContent;
}
/**
 * shows per_cent: a factor is set in the instrument; no second one may be applied.
 */
export interface InstrumentSetContent {
  instrument: EntryId;
  name: ShortName;
  shows: "brix" | "per_cent";
  factor_inside?: Typed;
  compensates?: boolean;
  remarks?: Remarks;
}
/**
 * newer: kept, carried on and not used, since this version does not know their schema or kind. quarantined: kept and not used, since they are damaged or not allowed.
 */
export interface LogCounts {
  lines: number;
  newer: number;
  quarantined: number;
  as_written: number;
  corrected: number;
  withdrawn: number;
  conflict: number;
  disputed: number;
  left_out: number;
}
/**
 * What does not hold. forks: different lines under one number or id. gaps: missing numbers. breaks: a line whose line before is another one. missing_heads: lines that somebody knew of and that are not there.
 */
export interface LogReport {
  logs: LogHead[];
  forks: {
    why: "number" | "id";
    log: string;
    seq: number;
    id: string;
    hashes: EntryHash[];
  }[];
  gaps: {
    log: EntryId;
    first: number;
    last: number;
  }[];
  breaks: {
    log: EntryId;
    seq: number;
    hash: EntryHash;
  }[];
  missing_heads: LogHead[];
  clock_flags: {
    log: EntryId;
    seq: number;
    hash: EntryHash;
    flag: ClockFlag;
  }[];
  quarantined: {
    code: ErrorCode;
    path: string;
    start: string;
  }[];
}
export interface WhoNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  who_to_ask: string;
}
export interface LimitsNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  look_limits: LookLimits;
}
/**
 * Thresholds of the shop; the published ones hold where none is given.
 */
export interface LookLimits {
  ph_low?: Typed;
  ph_high?: Typed;
  ph_drop?: Typed;
  ph_drop_far?: Typed;
  nitrite_most?: Typed;
  cold?: Typed;
  warm?: Typed;
  dip_slide?: LookSlideLimits;
}
/**
 * Counts per mL from which it is looked into and from which it is cleaned, and whose bands these are.
 */
export interface LookSlideLimits {
  scheme: string;
  review: Typed;
  act: Typed;
}
/**
 * since: when the shift began. Notes and unknown additions count from then on; what is open, due, off the band, low or stopped counts however old it is.
 */
export interface HandoverBody {
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  /**
   * @maxItems 1000
   */
  heads?: LogHead[];
  now: Moment;
  since: Moment;
}
export interface HandoverResult {
  open_pours: {
    machine: EntryId;
    name: string;
    open: OpenPour;
  }[];
  rechecks: {
    machine: EntryId;
    name: string;
    due: DueRecheck;
  }[];
  /**
   * Items: Machines whose last reading is too weak or too strong and after which the log knows of no pour, however old it is. Machines at rest or with an open pour are not among them.
   */
  off_band: {
    machine: EntryId;
    name: string;
    reading: StrengthNow;
  }[];
  /**
   * Those that are due.
   */
  checks: CheckDue[];
  /**
   * Those for which something speaks for a clean-out.
   */
  clean_outs: CheckDue[];
  /**
   * Items: Sumps with room for at least one whole usable bucket, by their last dip. Machines that are stopped or at rest are not among them.
   */
  low_sumps: {
    machine: EntryId;
    name: string;
    level: LevelNow;
  }[];
  states: {
    machine: EntryId;
    name: string;
    now: StateNow;
  }[];
  said: {
    entry: EntryId;
    kind: EntryKind;
    machine: string;
    name: string;
    measured_at: Moment;
    by: string;
    text: string;
  }[];
  unknown_additions: {
    entry: EntryId;
    machine: EntryId;
    name: string;
    measured_at: Moment;
  }[];
  in_doubt: {
    machine: EntryId;
    name: string;
  }[];
}
/**
 * usual is this machine's usual top-up strength; without it the strength of the last recipe's top-up is taken. fill_to_depth replaces the full mark for this once.
 */
export interface HoldCheckBody {
  machine: MachineTyped;
  dip: DipTyped;
  usual?: Typed;
  fill_to_depth?: Typed;
  /**
   * The last whole check as it was stored, and when it was taken.
   */
  last?: {
    check: PlanCheckBody;
    /**
     * ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00.
     */
    at: string;
  };
  /**
   * A reading without a dip that was taken after the last whole check: its strength replaces that of the check.
   */
  read?: {
    machine: MachineTyped;
    reading: ReadingTyped;
    /**
     * ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00.
     */
    at: string;
  };
  /**
   * ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00.
   */
  now: string;
}
export interface HoldCheckResult {
  assessment: AssessSumpResult;
  request: PlanHoldingBody;
  holding: PlanHoldingResult;
  shown: HoldShown;
  /**
   * What was taken for granted: the last recipe was poured; its top-up is the usual one; that recipe corrected the strength, so that its mix is hardly the usual one; the strength moves in a day as far as shown.
   */
  assumed: ("last_recipe_poured" | "usual_of_last_recipe" | "usual_of_correction" | "drift")[];
  after: Section;
  doubts: Doubt[];
}
/**
 * A dip without a reading.
 */
export interface PlanHoldingBody {
  volume_l: {
    value: number;
    u: number;
  };
  fill_to_l: number;
  /**
   * This machine's usual top-up strength.
   */
  usual_pct: number;
  target: PlanTarget;
  mixing: PlanMixing;
  bucket: PlanBucket;
  /**
   * The last reading.
   */
  last?: {
    strength_pct: {
      value: number;
      u: number;
    };
    age_d: number;
    /**
     * How far the strength of this sump can move in a day, in points.
     */
    drift_pct_d: number;
  };
  pail?: PlanPail;
  /**
   * Standard uncertainty of a rough level alone, which does not move the mark that is filled to as that of a plate or a table does.
   */
  level_u_l?: number;
  /**
   * Minutes that the pump runs before the second reading; by the size of the circuit without it.
   */
  mix_min?: number;
}
export interface PlanTarget {
  low_pct: number;
  aim_pct: number;
  high_pct: number;
}
export interface PlanMixing {
  /**
   * Strongest premix that this fluid allows.
   */
  strong_pct: number;
  /**
   * Weakest mix; 0 = plain water is fine.
   */
  weak_pct: number;
  /**
   * How near to the aim is near enough, in points.
   */
  closeness_pct: number;
}
/**
 * Amounts are whole marks.
 */
export interface PlanBucket {
  usable_l: number;
  water_mark_l: number;
  jug_mark_l: number;
}
/**
 * Lowest marks of pail and jug, size of the jug, and whether concentrate is measured by the jug or by the pail's own marks.
 */
export interface PlanPail {
  first_mark_l?: number;
  jug_first_mark_l?: number;
  jug_max_l?: number;
  measure_by?: "jug" | "pail";
}
export interface PlanHoldingResult {
  pours: Pour[];
  steps: Step[];
  totals: {
    buckets: number;
    water_l: number;
    concentrate_l: number;
  };
  volume_l: number;
  cautions: (
    | "reading_open"
    | "may_be_out_of_band"
    | "gloves_and_eyes"
    | "no_usual_mix"
    | "water_first"
    | "nothing_to_pour"
    | "watch_the_mark"
  )[];
  /**
   * Worst-case ends of the strength after the top-up.
   */
  ends?: {
    low_pct: number;
    high_pct: number;
  };
}
/**
 * So many buckets, each with this water and this concentrate, in pouring order. Of a ready mix they say what is in it.
 */
export interface Pour {
  count: number;
  water_l: number;
  concentrate_l: number;
  /**
   * The sump's own fluid as the carrier.
   */
  fluid_l?: number;
  kind?: "own_fluid" | "ready_mix";
}
export interface Step {
  kind: "take_out" | "bucket" | "own_fluid" | "unit" | "hose" | "run" | "read_again";
  /**
   * Which of pours.
   */
  pour?: number;
  minutes?: number;
  /**
   * Litres to take out or to run in.
   */
  volume_l?: number;
  /**
   * Setting of the mixing unit.
   */
  setting_pct?: number;
}
/**
 * poured is the strength of all that is poured, where anything is. last is the strength after the last check's recipe, drift how far it is taken to move in a day, low and high the worst-case ends after this top-up: only where a last check is known.
 */
export interface HoldShown {
  pours: PourShown[];
  now_volume: Shown;
  water: Shown;
  concentrate: Shown;
  added: Shown;
  volume: Shown;
  usual: Shown;
  poured?: Shown;
  band_low: Shown;
  band_high: Shown;
  last?: Shown;
  drift?: Shown;
  low?: Shown;
  high?: Shown;
  fill_to?: Shown;
}
/**
 * smell_again: how it smells after circulating; only after a bad smell. nitrite_before: earlier results, the oldest first. foam_from: what the foam was found to come from; only after foam.
 */
export interface JudgeLookBody {
  /**
   * @maxItems 20
   */
  seen: Look[];
  fluid_type?: "soluble_oil" | "semi_synthetic" | "synthetic";
  smell_again?: "gone" | "still";
  ph?: Typed;
  first_fill_ph?: Typed;
  nitrite?: Typed;
  /**
   * @maxItems 200
   */
  nitrite_before?: Typed[];
  temperature?: Typed;
  dip_slide?: LookSlide;
  limits?: LookLimits;
  foam_from?: "level" | "cleaner" | "strength" | "water" | "none";
}
export interface LookSlide {
  germs?: Typed;
  yeast?: Typed;
}
/**
 * The strongest decision of the rows that hold, strongest first. It advises and locks nobody out. foam: what it is looked into for, in order.
 */
export interface JudgeLookResult {
  decision: "go_on" | "skim_first" | "check_chemistry_first" | "do_not_feed";
  rows: LookRow[];
  foam: ("level" | "cleaner" | "strength" | "water")[];
  smell_again: boolean;
  doubts: Doubt[];
  nitrite_interval_d?: number;
}
export interface LookRow {
  code:
    | "floating_oil"
    | "foam"
    | "foam_level"
    | "foam_cleaner"
    | "foam_strength"
    | "foam_water"
    | "foam_none"
    | "cream"
    | "grey_or_brown"
    | "slime"
    | "rust"
    | "chips_or_sludge"
    | "skin_complaint"
    | "level_odd"
    | "split"
    | "clear_synthetic"
    | "smell"
    | "smell_gone"
    | "smell_stays"
    | "ph_low"
    | "ph_high"
    | "ph_dropped"
    | "ph_dropped_far"
    | "nitrite_high"
    | "germs_review"
    | "germs_act"
    | "warm"
    | "cold";
  decision: "go_on" | "skim_first" | "check_chemistry_first" | "do_not_feed";
  source: string;
}
export interface JudgePracticeBody {
  check: PlanCheckBody;
  answers: PracticeAnswers;
}
/**
 * What was worked out by hand so far.
 */
export interface PracticeAnswers {
  volume?: Typed;
  strength?: Typed;
  room?: Typed;
  take_out?: Typed;
  top_up?: Typed;
  /**
   * @minItems 1
   * @maxItems 6
   */
  pours?: OwnBucketTyped[];
}
/**
 * Buckets alike, water and concentrate of each.
 */
export interface OwnBucketTyped {
  count: Typed;
  water: Typed;
  concentrate: Typed;
}
export interface JudgePracticeResult {
  steps: StepJudged[];
  solution: RecipeJudged;
  aim: Shown;
  band_low: Shown;
  band_high: Shown;
  doubts: Doubt[];
  before?: Section;
  recipe?: OwnJudged;
  /**
   * Every number that a worked line may need; missing is how far the strength is from the aim, gain how far the strongest mix is above it, in points.
   */
  working: {
    depth?: Shown;
    full_depth?: Shown;
    full_volume?: Shown;
    reading?: Shown;
    factor?: Shown;
    volume: Shown;
    strength: Shown;
    room: Shown;
    aim: Shown;
    strong: Shown;
    missing: Shown;
    gain: Shown;
  };
}
/**
 * allowed: what the stick, the glass or the jug cannot tell apart. near: within that. follows: right from the person's own earlier numbers, which lead to own. slip: the usual mistake that gives this number. difference is without its sign.
 */
export interface StepJudged {
  step: "volume" | "strength" | "room" | "take_out" | "top_up";
  right: Shown;
  allowed: Shown;
  verdict?: "right" | "near" | "follows" | "off";
  given?: Shown;
  difference?: Shown;
  slip?:
    | "room_as_volume"
    | "depth_as_volume"
    | "share_as_volume"
    | "factor_forgotten"
    | "factor_divided"
    | "volume_as_room"
    | "depth_as_room"
    | "goes_out_too"
    | "concentrate_alone"
    | "aim_as_top_up"
    | "wrong_way"
    | "shortfall_as_top_up"
    | "sump_only"
    | "sump_forgotten"
    | "of_water";
  own?: Shown;
}
/**
 * Without after: more than the sump holds up to its rim.
 */
export interface RecipeJudged {
  verdict: "on_target" | "in_band" | "out_of_band";
  pours: PourShown[];
  buckets: number;
  strength: Shown;
  low: Shown;
  high: Shown;
  volume: Shown;
  after?: Section;
  take_out?: Shown;
}
/**
 * A recipe is judged by where it ends. good: as good as ours. works: ends in the band. over: litres above the full mark; left: litres that still fit.
 */
export interface OwnJudged {
  standing: "good" | "works" | "off";
  faults: (
    | "above_mark"
    | "room_left"
    | "too_much_out"
    | "not_whole_marks"
    | "bucket_overfull"
    | "too_strong"
    | "too_weak"
  )[];
  recipe: RecipeJudged;
  over: Shown;
  left: Shown;
  slip?:
    | "of_water"
    | "aim_as_top_up"
    | "shortfall_as_top_up"
    | "sump_only"
    | "sump_forgotten"
    | "ten_times"
    | "a_tenth";
}
export interface LookBackBody {
  /**
   * Lines of this machine, and those that amend them.
   *
   * @maxItems 50000
   */
  lines: string[];
  machine: EntryId;
  now: Moment;
  dip?: DipTyped;
  reading?: ReadingTyped;
}
/**
 * nitrite_before: of this charge, the oldest first. topped_up: something was poured since the last dip whose water no recipe names. level: only with a dip and one before it of the same charge. doubts: a reading that is unlike the last one or, where there is none, far from the aim.
 */
export interface LookBackResult {
  first_fill_ph?: EarlierPh;
  nitrite_before: EarlierNitrite[];
  topped_up: boolean;
  level?: LevelChange;
  doubts: Doubt[];
}
export interface EarlierPh {
  ph: Typed;
  entry: EntryId;
  measured_at: Moment;
  from: "set_up" | "log";
}
export interface EarlierNitrite {
  nitrite: Typed;
  entry: EntryId;
  measured_at: Moment;
}
export interface LevelChange {
  verdict: "as_expected" | "explained" | "lost" | "gained" | "unknown_poured";
  expected_l: number;
  found_l: number;
  difference_l: Measured;
  most_lost_l: number;
  since: Moment;
  /**
   * own: the machine's own losses. practice: common practice, no source.
   */
  limit_by: "own" | "shop" | "practice";
  shown: {
    expected: Shown;
    found: Shown;
    difference: Shown;
    most_lost: Shown;
  };
}
/**
 * The short code of a number that the page drew by chance.
 */
export interface MakeCodeBody {
  code_number: number;
}
export interface MakeCodeResult {
  code: string;
  printed: string;
}
export interface MergeLogsBody {
  /**
   * @minItems 1
   * @maxItems 1000
   */
  files: {
    name: string;
    /**
     * A whole file, at most 20 MiB.
     */
    text: string;
  }[];
  now?: Moment;
}
/**
 * text is the same whatever the order of the files.
 */
export interface MergeLogsResult {
  text: string;
  files: FileReport[];
  report: LogReport;
}
/**
 * What one file brought. With refused, nothing of it was taken.
 */
export interface FileReport {
  name: string;
  refused?: DeskError;
  findings: ("no_header" | "cut" | "damaged")[];
  lines: number;
  added: number;
  known: number;
  newer: number;
  quarantined: number;
  missing?: number;
  /**
   * How far the writing device's clock was ahead of now, in seconds.
   */
  ahead_s?: number;
}
/**
 * left: litres that stayed in the sump after the last rinse; left_strength: their strength, 0 % for water.
 */
export interface PlanChargeBody {
  machine: MachineTyped;
  left: Typed;
  left_strength: Typed;
  concentrate_at_hand?: Typed;
}
export interface PlanCheckResult {
  assessment: AssessSumpResult;
  request: PlanRecipeBody;
  plan: PlanRecipeResult;
  shown: {
    pours: PourShown[];
    take_out: Shown;
    now_volume: Shown;
    now_strength: Shown;
    water: Shown;
    concentrate: Shown;
    added: Shown;
    strength: Shown;
    low: Shown;
    high: Shown;
    volume: Shown;
    aim: Shown;
    band_low: Shown;
    band_high: Shown;
    reach_low: Shown;
    reach_high: Shown;
    chance?: Chance;
    fill_to?: Shown;
    fill_room?: Shown;
    hidden?: Shown;
    fill_over?: Shown;
  };
  after: Section;
  ways: WayShown[];
  doubts: Doubt[];
  second?: SecondStrength;
  disagreement?: Disagreement;
}
/**
 * What there is, what is wanted, what one can pour with.
 */
export interface PlanRecipeBody {
  sump: {
    volume_l: {
      value: number;
      u: number;
    };
    strength_pct: {
      value: number;
      u: number;
    };
  };
  /**
   * The full mark, in the state in which the level was taken.
   */
  fill_to_l: number;
  target: PlanTarget;
  mixing: PlanMixing;
  bucket: PlanBucket;
  draw_off: {
    allowed: boolean;
    mark_l: number;
    /**
     * Litres that can be taken out; without it, all that is in the sump.
     */
    most_l?: number;
  };
  /**
   * The mark that may not be passed with the pump stopped; room above fill_to_l is used only by an alternative that says so.
   */
  never_above_l?: number;
  /**
   * Liquid that does not show on the stick: pipes, filters, a second tank. Without strength_pct it is the sump's own coolant: same strength, same error of the reading.
   */
  hidden?: {
    volume_l: {
      value: number;
      u: number;
    };
    strength_pct?: {
      value: number;
      u: number;
    };
  };
  pail?: PlanPail;
  /**
   * Beyond it a mixing unit, a hose or two days come first.
   */
  effort?: {
    most_buckets?: number;
    heaviest_kg?: number;
  };
  /**
   * A mixing unit (proportioner).
   */
  unit?: {
    lowest_pct: number;
    highest_pct: number;
    step_pct: number;
  };
  /**
   * What is at hand.
   */
  stock?: {
    concentrate_l?: number;
    water_l?: number;
    /**
     * @maxItems 20
     */
    ready_mixes?: {
      strength_pct: number;
      volume_l: number;
    }[];
  };
  /**
   * The sump's own healthy fluid as the carrier of concentrate.
   */
  own_fluid?: {
    allowed: boolean;
  };
  losses?: {
    /**
     * Litres a day that leave with parts and chips.
     */
    carry_out_l_d: number;
  };
  /**
   * Of the concentrate.
   */
  density_kg_l?: number;
  /**
   * Minutes that the pump runs before the second reading; by the size of the circuit without it.
   */
  mix_min?: number;
  /**
   * Standard uncertainty of a rough level alone, which does not move the mark that is filled to as that of a plate or a table does.
   */
  level_u_l?: number;
}
export interface PlanRecipeResult {
  verdict: "on_target" | "in_band" | "out_of_band";
  draw_off_l: number;
  pours: Pour[];
  steps: Step[];
  totals: {
    buckets: number;
    water_l: number;
    concentrate_l: number;
  };
  final: {
    volume_l: number;
    strength_pct: Measured;
    /**
     * Low end of the likely range, two standard uncertainties below.
     */
    low_pct: number;
    high_pct: number;
    /**
     * Fraction, 0 to 1.
     */
    chance_in_band: number;
  };
  shares: {
    input: "volume" | "strength" | "pail_marks" | "jug_marks";
    share: number;
  }[];
  cautions: (
    | "nothing_to_pour"
    | "above_full_mark"
    | "best_reachable"
    | "marks_too_coarse"
    | "not_filled_up"
    | "needs_stronger_premix"
    | "needs_weaker_mix"
    | "no_room"
    | "stock_short"
    | "water_short"
    | "taken_out_is_waste"
    | "own_fluid_clean"
    | "bucket_heavy"
    | "many_buckets"
    | "large_change"
    | "large_change_read"
    | "strong_harms_skin"
    | "weak_must_not_stand"
    | "gloves_and_eyes"
    | "water_first"
    | "rough"
    | "sensitive_to_dip"
    | "watch_the_mark"
  )[];
  /**
   * Where the sump stood.
   */
  case:
    | "lean_low"
    | "lean_full"
    | "in_range_low"
    | "in_range_full"
    | "rich_low"
    | "rich_full"
    | "new_charge"
    | "emptied";
  /**
   * Weakest and strongest result that the room left allows, before rounding to marks.
   */
  reachable: {
    low_pct: number;
    high_pct: number;
  };
  alternatives: Alternative[];
}
/**
 * Another complete way, with the reason to take it.
 */
export interface Alternative {
  why:
    | "alike"
    | "strong_first"
    | "smaller_dose"
    | "own_fluid"
    | "above_full_mark"
    | "ready_mix"
    | "mixing_unit"
    | "hose"
    | "two_days"
    | "without_draw_off"
    | "least_draw_off"
    | "draw_off_to_aim"
    | "leave_room"
    | "use_it_up"
    | "fetch_concentrate"
    | "fetch_water"
    | "fill_less"
    | "fill_to_edge"
    | "fill_up"
    | "lighter_buckets";
  verdict: "on_target" | "in_band" | "out_of_band";
  draw_off_l: number;
  pours: Pour[];
  steps: Step[];
  totals: {
    buckets: number;
    water_l: number;
    concentrate_l: number;
  };
  final: {
    volume_l: number;
    strength_pct: Measured;
    /**
     * Low end of the likely range, two standard uncertainties below.
     */
    low_pct: number;
    high_pct: number;
    /**
     * Fraction, 0 to 1.
     */
    chance_in_band: number;
  };
  shares: {
    input: "volume" | "strength" | "pail_marks" | "jug_marks";
    share: number;
  }[];
  cautions: (
    | "nothing_to_pour"
    | "above_full_mark"
    | "best_reachable"
    | "marks_too_coarse"
    | "not_filled_up"
    | "needs_stronger_premix"
    | "needs_weaker_mix"
    | "no_room"
    | "stock_short"
    | "water_short"
    | "taken_out_is_waste"
    | "own_fluid_clean"
    | "bucket_heavy"
    | "many_buckets"
    | "large_change"
    | "large_change_read"
    | "strong_harms_skin"
    | "weak_must_not_stand"
    | "gloves_and_eyes"
    | "water_first"
    | "rough"
    | "sensitive_to_dip"
    | "watch_the_mark"
  )[];
  /**
   * What has to happen first: the level to fall to with its strength then, or the days.
   */
  wait?: {
    level_l?: number;
    strength_pct?: number;
    /**
     * Days of topping up with the weakest mix.
     */
    time_d?: number;
  };
}
/**
 * Another way, ready to show.
 */
export interface WayShown {
  why: string;
  verdict: string;
  pours: PourShown[];
  strength: Shown;
  low: Shown;
  high: Shown;
  volume: Shown;
  take_out?: Shown;
  level?: Shown;
  level_depth?: Shown;
  level_strength?: Shown;
  days?: number;
  run_in?: Shown;
  setting?: Shown;
  chance?: Chance;
  after: Section;
  cautions: string[];
}
/**
 * The second method's own result; never averaged with the first.
 */
export interface SecondStrength {
  method: "acid_split" | "titration";
  strength_pct: Measured;
  /**
   * (refractometer − second method) over their combined expanded uncertainty; beyond 1 either way they disagree.
   */
  normalised_error: number;
  agrees: boolean;
  cautions: "strong_acid"[];
  shown: {
    shows: Shown;
    factor: Shown;
    strength: Shown;
    low: Shown;
    high: Shown;
  };
}
/**
 * Two methods that differ by more than their uncertainties allow: what can pull them apart, and both recipes. The main plan is the smaller dose: pour it, run the pump, read both again. other: the whole answer for the other strength, which needs more concentrate, without a second method.
 */
export interface Disagreement {
  low_pct: number;
  high_pct: number;
  /**
   * Which strength the main plan is for: the one that needs less concentrate.
   */
  planned_for: "low" | "high";
  codes: (
    | "refractometer_sees_oil"
    | "refractometer_sees_minerals"
    | "titration_falls_when_sour"
    | "titration_raised_by_cleaner"
    | "split_counts_tramp_oil"
    | "pour_the_smaller_dose"
    | "ask_a_laboratory"
  )[];
  shown: {
    low: Shown;
    high: Shown;
  };
  other: PlanCheckResult;
}
/**
 * Reads a machine's short code as it was typed or scanned.
 */
export interface ReadCodeBody {
  text: string;
}
export interface ReadCodeResult {
  code: string;
  printed: string;
}
/**
 * lines and heads are what the device has. Nothing is changed by asking.
 */
export interface ReadExportBody {
  /**
   * A whole file, at most 20 MiB.
   */
  text: string;
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  /**
   * @maxItems 1000
   */
  heads?: LogHead[];
  now?: Moment;
}
/**
 * kinds and machines count what would be added. report is about the whole after adding.
 */
export interface ReadExportResult {
  file: FileReport;
  /**
   * Lines to add to the store, those in quarantine among them, in the order of the store.
   */
  added: string[];
  kinds: {
    kind: string;
    count: number;
  }[];
  machines: {
    machine: EntryId;
    name: string;
    count: number;
  }[];
  heads: LogHead[];
  report: LogReport;
}
/**
 * last_factor: the factor that was known before, as per cent for one Brix; one that has moved by more than a tenth is asked about.
 */
export interface ReadFluidBody {
  fluid: FluidTyped;
  instrument?: InstrumentTyped;
  last_factor?: Typed;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  today: string;
}
/**
 * five_reads: what a mix of 5 % shows on this instrument, so that a factor given the wrong way round is seen.
 */
export interface ReadFluidResult {
  factor?: Measured;
  offset_brix?: number;
  /**
   * Per cent for one Brix of each step of a chart.
   */
  slopes?: number[];
  strong_pct?: number;
  weak_pct?: number;
  low_pct?: number;
  aim_pct?: number;
  high_pct?: number;
  first_fill_ph?: number;
  density_kg_l?: number;
  drum?: {
    delivered_d?: number;
    opened_d?: number;
    best_before?: string;
  };
  zero_age_d?: number;
  cautions: (
    | "magnesium"
    | "magnesium_not_asked"
    | "not_made_for_magnesium"
    | "drum_age_unknown"
    | "past_shelf_life"
    | "past_usual_shelf_life"
    | "ask_shelf_life"
  )[];
  notes: ("zero_old" | "zero_age_unknown" | "zero_not_taken" | "no_factor")[];
  shown: {
    factor?: Shown;
    factor_u?: Shown;
    five_reads?: Shown;
    strong?: Shown;
    weak?: Shown;
    low?: Shown;
    aim?: Shown;
    high?: Shown;
    first_fill_ph?: Shown;
    density?: Shown;
    water_low?: Shown;
    water_high?: Shown;
    zero?: Shown;
    resolution?: Shown;
  };
  doubts: Doubt[];
}
export interface ReadMachineBody {
  machine: MachineTyped;
}
export interface ReadMachineResult {
  full_depth_mm: number;
  rim_depth_mm: number;
  full_volume_l: number;
  rim_volume_l: number;
  litres_per_mm: number;
  low_pct: number;
  aim_pct: number;
  high_pct: number;
  strong_pct: number;
  weak_pct: number;
  closeness_pct: number;
  usable_l: number;
  water_mark_l: number;
  jug_mark_l: number;
  shown: {
    full_depth: Shown;
    full_volume: Shown;
    low: Shown;
    aim: Shown;
    high: Shown;
    usable: Shown;
    water_mark: Shown;
    jug_mark: Shown;
    strong: Shown;
    weak: Shown;
    factor?: Shown;
    one?: Shown;
    one_holds?: Shown;
    five_reads?: Shown;
  };
  doubts: Doubt[];
  factor?: number;
  drawing: Drawing;
  /**
   * Litres below the stick's foot, where that is not the deepest place.
   */
  least_volume_l?: number;
  hidden_l?: Measured;
  rest_l?: number;
}
/**
 * Reads one typed number.
 */
export interface ReadQuantityBody {
  text: string;
  /**
   * A name from shared/quantities.json that is typed by people, such as depth_mm.
   */
  quantity: string;
  unit?: Unit;
}
export interface ReadQuantityResult {
  quantity: string;
  /**
   * In the unit that the quantity's name ends in.
   */
  value: number;
  read_as: Shown;
  in_unit?: Shown1;
  doubts: Doubt[];
}
/**
 * A number rounded for people in the unit of the tool. The page only sets the decimal sign and the space.
 */
export interface Shown1 {
  value: number;
  decimals: number;
  unit: Unit;
  fraction?: Fraction;
}
/**
 * limits: those of the fluid that is mixed with this water.
 */
export interface ReadWaterBody {
  water: WaterTyped;
  limits?: WaterLimitsTyped;
}
export interface ReadWaterResult {
  kind: string;
  hardness?: Hardness;
  chloride_mg_l?: number;
  nitrate_mg_l?: number;
  scheme?: string;
  cautions: (
    | "softened_keeps_salts"
    | "hard_for_demineralised"
    | "water_too_soft"
    | "water_too_hard"
    | "chloride_high"
    | "nitrate_high"
  )[];
  shown: {
    chloride?: Shown;
    nitrate?: Shown;
    low?: Shown;
    high?: Shown;
  };
  doubts: Doubt[];
}
export interface Hardness {
  hardness_mg_l: number;
  hardness_dh: number;
  hardness_fh: number;
  hardness_gpg: number;
  hardness_mmol_l: number;
  /**
   * The same in all units, rounded, mg/L of calcium carbonate first.
   */
  shown: Shown[];
}
/**
 * check is the first check as it was stored, with the set-up of that time; machine is the set-up now, by which the second reading is read. pours is what really went in, poured_at the last bucket.
 */
export interface RecheckBody {
  check: PlanCheckBody;
  machine: MachineTyped;
  pours: BucketRows;
  draw_off?: Typed;
  poured_at: Moment;
  reading: ReadingTyped;
  dip?: DipTyped;
  now: Moment;
}
/**
 * Buckets that are alike. water and concentrate are the marks of one bucket.
 */
export interface BucketRow {
  count: number;
  /**
   * concentrate: neat, where the fluid's settings allow it.
   */
  kind?: "mix" | "water" | "concentrate" | "own_fluid" | "ready_mix" | "unknown";
  each?: Typed;
  water?: Typed;
  concentrate?: Typed;
  strength?: Typed;
  /**
   * Remembered or estimated, not measured.
   */
  about?: boolean;
}
/**
 * minutes since the last bucket; early and late are both allowed. reasons: what a difference may come from, the likeliest first.
 */
export interface RecheckResult {
  assessment: AssessSumpResult;
  minutes: number;
  reasons: (
    | "unknown_poured"
    | "mixed_too_short"
    | "level_higher"
    | "level_lower"
    | "sump_holds_more"
    | "sump_holds_less"
    | "hidden_not_run"
    | "check_dip"
    | "check_reading"
    | "check_factor"
    | "check_marks"
    | "somebody_added"
  )[];
  shown: RecheckShown;
  doubts: Doubt[];
  strength?: RecheckStrength;
  level?: RecheckLevel;
}
/**
 * difference is in points, without its sign.
 */
export interface RecheckShown {
  expected?: Shown;
  expected_low?: Shown;
  expected_high?: Shown;
  found?: Shown;
  difference?: Shown;
  expected_volume?: Shown;
  before_volume?: Shown;
  implied_volume?: Shown;
  level_expected?: Shown;
  level_found?: Shown;
  level_difference?: Shown;
}
/**
 * difference is found less expected; normalised_error is the difference over its expanded uncertainty (k = 2). implied_l is what must have been in the circuit before the pour for the found strength to be right, only where that is known well enough.
 */
export interface RecheckStrength {
  expected_l: Measured;
  expected_pct: Measured;
  found_pct: Measured;
  difference_pct: Measured;
  normalised_error: number;
  verdict: "as_expected" | "weaker" | "stronger";
  checks: ("check_dip" | "check_reading" | "check_factor" | "check_marks")[];
  before_l: Measured;
  implied_l?: Measured;
}
/**
 * Litres of the sump alone, as the stick shows them.
 */
export interface RecheckLevel {
  expected_l: number;
  found_l: number;
  difference_l: Measured;
  normalised_error: number;
  verdict: "as_expected" | "higher" | "lower";
}
/**
 * days: only what was measured in so many days before now. The shop's own intervals are facts of the log; the published ones hold without them.
 */
export interface TrendBody {
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  /**
   * @maxItems 1000
   */
  heads?: LogHead[];
  now: Moment;
  machine: EntryId;
  days?: number;
  limits?: LookLimits;
}
export interface TrendResult {
  name: string;
  unit: Unit;
  /**
   * Seconds since 1970.
   */
  from_s: number;
  /**
   * Seconds since 1970.
   */
  now_s: number;
  rows: TrendRow[];
  added: TrendAddition[];
  bands: TrendBand[];
  rests: TrendSpell[];
  losses: TrendLosses;
  clean_out: TrendCleanOut;
  full_volume_l?: number;
  strength?: TrendStrength;
  next_check?: TrendNextCheck;
}
/**
 * One check, second reading or clean-out, and what went in since the row before.
 */
export interface TrendRow {
  entry: EntryId;
  kind: "check" | "recheck" | "clean_out";
  measured_at: string;
  /**
   * Seconds since 1970.
   */
  at_s: number;
  water_l: number;
  concentrate_l: number;
  added_unknown: number;
  trouble: string[];
  shown: {
    water: Shown;
    concentrate: Shown;
    volume?: Shown;
    strength?: Shown;
    ph?: Shown;
  };
  strength_pct?: Measured;
  state?: "weak" | "in_range" | "strong";
  volume_l?: Measured;
  ph?: number;
}
export interface TrendAddition {
  measured_at: string;
  /**
   * Seconds since 1970.
   */
  at_s: number;
  water_l: number;
  concentrate_l: number;
  unknown: number;
}
export interface TrendBand {
  /**
   * Seconds since 1970.
   */
  from_s: number;
  /**
   * Seconds since 1970.
   */
  to_s: number;
  low_pct: number;
  high_pct: number;
}
export interface TrendSpell {
  /**
   * Seconds since 1970.
   */
  from_s: number;
  /**
   * Seconds since 1970.
   */
  to_s: number;
}
/**
 * Litres a day. Without lost_l_d there are fewer steps than needed. What is not shown lies within two of its own uncertainties of nothing.
 */
export interface TrendLosses {
  steps: number;
  needed: number;
  left_out: TrendLeftOut[];
  shown: {
    lost?: Shown;
    lost_low?: Shown;
    lost_high?: Shown;
    carry_out?: Shown;
    carry_out_low?: Shown;
    carry_out_high?: Shown;
    evaporation?: Shown;
    evaporation_low?: Shown;
    evaporation_high?: Shown;
    top_up?: Shown;
    top_up_low?: Shown;
    top_up_high?: Shown;
    aim?: Shown;
  };
  over_d?: number;
  lost_l_d?: Measured;
  concentrate_l_d?: Measured;
  carry_out_l_d?: Measured;
  evaporation_l_d?: Measured;
  top_up_pct?: Measured;
}
export interface TrendLeftOut {
  why: "unknown_added" | "unknown_taken" | "at_rest" | "unusual";
  count: number;
}
export interface TrendCleanOut {
  reasons: CleanOutReasons;
  /**
   * Whether they are enough for one: a dip slide that wants to be looked into is not.
   */
  due: boolean;
  every_d: number;
  at?: string;
  age_d?: number;
}
/**
 * From the first to the last reading of this charge. A direction needs three readings. error: points by which two of them can lie apart by themselves, where no direction is sure.
 */
export interface TrendStrength {
  readings: number;
  below: number;
  above: number;
  over_d: number;
  direction:
    "too_few" | "rising" | "falling" | "rising_little" | "falling_little" | "level" | "unsure";
  shown: {
    first: Shown;
    last: Shown;
    per_week?: Shown;
    error?: Shown;
    added?: Shown;
  };
  slope_pct_d?: number;
}
export interface TrendNextCheck {
  /**
   * Seconds since 1970.
   */
  due_s: number;
  overdue: boolean;
  every_d: number;
  why: "interval" | "out_of_band" | "drifts_low" | "drifts_high";
  resting: boolean;
}
/**
 * What becomes of a sump, change by change.
 */
export interface TrySumpBody {
  check: PlanCheckBody;
  /**
   * @maxItems 60
   */
  changes: ChangeTyped[];
}
/**
 * volume of what evaporates or is carried out; water and concentrate of one bucket that is poured.
 */
export interface ChangeTyped {
  kind: "evaporate" | "carry_out" | "pour";
  volume?: Typed;
  count?: number;
  water?: Typed;
  concentrate?: Typed;
}
/**
 * states: before, and after each change.
 */
export interface TrySumpResult {
  states: TriedState[];
  pours: PourShown[];
  doubts: Doubt[];
}
export interface TriedState {
  volume: Shown;
  strength: Shown;
  state: "weak" | "in_range" | "strong";
  section: Section;
}
export interface WriteCsvBody {
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  now: Moment;
}
/**
 * Never read back.
 */
export interface WriteCsvResult {
  text: string;
  rows: number;
}
export interface WriteExportBody {
  /**
   * Rows of the store: sealed lines, or rows of the first schema as they were stored.
   *
   * @maxItems 50000
   */
  lines: string[];
  /**
   * @maxItems 1000
   */
  heads?: LogHead[];
  now: Moment;
  build: string;
}
export interface WriteExportResult {
  text: string;
  lines: number;
  newer: number;
  quarantined: number;
  heads: LogHead[];
}
/**
 * A record only: no dose is worked out from it.
 */
export interface AdditiveContent {
  name: ShortName;
  amount?: Typed;
  agreed_with?: ShortText;
  remarks?: Remarks;
}
/**
 * instrument: zero in water, or what it shows of a known mix. A sump's pour test stands with its set-up.
 */
export interface CalibrationContent {
  of: "instrument";
  instrument?: EntryId;
  zero?: Typed;
  shows?: Typed;
  reference?: Typed;
  temperature?: Typed;
  remarks?: Remarks;
}
/**
 * All optional, all as typed. machine is a copy of the set-up at that time, so that an old reading keeps its factor. of names the pour that a re-check looks after. first_fill_ph: what somebody said the pH of this charge was at its first fill. despite names the tag or the stop that somebody has seen and checked in spite of.
 */
export interface CheckContent {
  machine?: MachineTyped;
  dip?: DipTyped;
  reading?: ReadingTyped;
  aim?: Typed;
  fill_to_depth?: Typed;
  concentrate_at_hand?: Typed;
  hidden_strength?: Typed;
  /**
   * @maxItems 20
   */
  look?: Look[];
  ph?: Typed;
  first_fill_ph?: Typed;
  temperature?: Typed;
  nitrite?: Typed;
  /**
   * Count as read after incubation, per mL.
   */
  dip_slide?: {
    germs?: Typed;
    yeast?: Typed;
  };
  instrument?: EntryId;
  of?: EntryId;
  remarks?: Remarks;
  second?: SecondTyped;
  /**
   * ISO 8601 date or date and time, with its offset from UTC or of the shop's own clock: 2026-11-25, 2026-11-25T18:40, 2026-11-25T18:40:00+01:00.
   */
  now?: string;
  usual?: Typed;
  /**
   * The last whole check as it was stored, and when it was taken.
   */
  last?: {
    check: PlanCheckBody;
    /**
     * ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00.
     */
    at: string;
  };
  /**
   * A reading without a dip that was taken after the last whole check: its strength replaces that of the check.
   */
  read?: {
    machine: MachineTyped;
    reading: ReadingTyped;
    /**
     * ISO 8601 with its offset, such as 2026-11-25T09:42:00+01:00.
     */
    at: string;
  };
  /**
   * Which of the other ways was chosen, counted from 0; absent for the main recipe.
   */
  way?: number;
  despite?: EntryId;
  /**
   * The water of the last top-ups.
   */
  topped_up_with?: "mains" | "demineralised" | "softened" | "unknown";
  /**
   * What a person says of a level that fell or rose more than the log explains.
   */
  level_change?:
    | "evaporated"
    | "leak"
    | "taken_out"
    | "poured_in"
    | "water_getting_in"
    | "measured_wrong"
    | "unknown";
}
/**
 * Old fluid out and, where charge is given, a new charge in. steps: states that were reached, and when. left: litres that stayed, of left_strength. Not finished: stopped early, the steps say where.
 */
export interface CleanOutContent {
  finished: boolean;
  /**
   * @maxItems 50
   */
  steps?: {
    state:
      | "ready"
      | "locked"
      | "skimmed"
      | "cleaner_in"
      | "ran"
      | "drained"
      | "chips_out"
      | "rinsed"
      | "rinse_out"
      | "rinsed_again"
      | "left"
      | "charged"
      | "circulated";
    at: Moment;
  }[];
  cleaner?: ShortText;
  waste?: Typed;
  waste_note?: string;
  rinse?: Typed;
  left?: Typed;
  left_strength?: Typed;
  charge?: BucketRows;
  fluid?: EntryId;
  lot?: ShortText;
  remarks?: Remarks;
}
/**
 * content replaces the whole content of the corrected entry, which is of this kind; machine and measured_at replace those of its outside. settles names other corrections and withdrawals that this one decides about.
 */
export interface CorrectionContent {
  corrects: EntryId;
  /**
   * @maxItems 50
   */
  settles?: EntryId[];
  reason: Reason;
  kind: EntryKind;
  content: {};
  machine?: EntryId;
  measured_at?: Moment;
}
/**
 * Which lines of a fork count, or which of several entries is the latest. It holds for lines that it names, all of them.
 */
export interface DecisionContent {
  /**
   * @maxItems 50
   */
  use: EntryHash[];
  /**
   * @maxItems 50
   */
  leave: EntryHash[];
  reason: Reason;
}
/**
 * No fields.
 */
export interface Empty {}
/**
 * One entry as it is sealed: the line has one more field at its very end, hash, SHA-256 of the UTF-8 text without that field. What stands in the line is what was stored; it is never written anew.
 */
export interface LogEntry {
  id: EntryId;
  log: EntryId;
  seq: number;
  /**
   * Hash of the line before in the same log; empty in the first.
   */
  prev: string;
  schema: 2;
  kind: EntryKind;
  machine?: EntryId;
  measured_at: Moment;
  wall: Moment;
  /**
   * @maxItems 3
   */
  clock_flags: ClockFlag[];
  by?: string;
  /**
   * <kind>_content
   */
  body: {};
  /**
   * What the page showed, for people; nothing is ever worked out from it.
   */
  shown?: {};
  versions: {
    build: ShortText;
    pycore: string;
  };
}
/**
 * pour_test: the steps as they were typed, with their times, where the table of this set-up was found by pouring.
 */
export interface MachineSetContent {
  machine: MachineTyped;
  code?: ShortCode;
  remarks?: Remarks;
  pour_test?: CalibrateSumpBody;
}
export interface NoteContent {
  text: Reason;
  until?: Moment;
}
/**
 * The recipe as it was shown: amounts as text in the units of the tools. way names the alternative that was chosen.
 */
export interface PlanContent {
  check?: EntryId;
  pours: BucketRows;
  draw_off?: Typed;
  way?: ShortText;
  remarks?: Remarks;
}
/**
 * What really went in. Without plan: a top-up without a recipe. finished false: more is to come. An empty list that is finished: given up.
 */
export interface PourContent {
  plan?: EntryId;
  pours: BucketRows;
  finished: boolean;
  draw_off?: Typed;
  recheck_due_at?: Moment;
  lot?: ShortText;
  looked_even?: boolean;
  remarks?: Remarks;
}
/**
 * One question to pycore.
 */
export interface DeskRequest {
  v: 1;
  id: string;
  op: string;
  body: {};
}
/**
 * Facts of the shop. Each field counts by its own latest entry; an empty one takes back what was set. check_every_d, clean_out_every_d: days from one check or clean-out to the next at the most; most_lost_pct_d: what ordinary use takes in a day at the most, per cent of the full sump; a line in which one of them cannot be read goes into quarantine.
 */
export interface ShopSetContent {
  who_to_ask?: ShortText;
  look_limits?: LookLimits;
  check_every_d?: Typed;
  clean_out_every_d?: Typed;
  most_lost_pct_d?: Typed;
  remarks?: Remarks;
}
/**
 * Somebody poured and did not write it down.
 */
export interface UnknownAdditionContent {
  what?: "water" | "mix" | "concentrate" | "unknown";
  remarks?: Remarks;
}
export interface WithdrawalContent {
  retracts: EntryId;
  /**
   * @maxItems 50
   */
  settles?: EntryId[];
  reason: Reason;
}
