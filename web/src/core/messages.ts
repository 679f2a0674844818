// Generated from shared/schema by `python3 -m web contract`. Do not edit.

/**
 * How a dip becomes litres. proportional: litres grow evenly to full_volume at full_depth. box: length × width. table: pairs of depth and litres, rising, (0, 0) added when missing. full_depth is the full mark, never_above_depth the mark that may not be passed with the pump stopped. rim_depth is the deepest dip that can be; without it, full_depth plus 10 %, or the last row of the table.
 */
export type SumpTyped = {
  kind: "proportional" | "box" | "table";
  full_depth: Typed;
  /**
   * Standard uncertainty of the litres: plate 10 %, poured with a marked pail 3 %, somebody said 15 % (common practice, no source).
   */
  volume_known_by: "plate" | "poured" | "said";
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
  }[];
  rim_depth?: Typed;
  never_above_depth?: Typed;
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
  | "mg/L"
  | "CFU/mL"
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
 * 128 random bits, made when the form opens, so that a second try is the same entry.
 */
export type EntryId = string;
/**
 * SHA-256 of a line without its last field, hash.
 */
export type EntryHash = string;
/**
 * Local time with its offset, such as 2026-11-25T06:30:00+01:00.
 */
export type Moment = string;
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
  | "two_separators"
  | "missing_unit"
  | "ambiguous_unit"
  | "unknown_unit"
  | "wrong_dimension"
  | "order"
  | "not_rising"
  | "mark_above_bucket"
  | "no_factor"
  | "neat_oil"
  | "wrong_form"
  | "seal_missing"
  | "seal_broken"
  | "file_empty"
  | "file_foreign"
  | "file_newer"
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
  | "machine_state"
  | "note"
  | "correction"
  | "withdrawal"
  | "decision";
/**
 * @maxItems 200
 */
export type BucketRows = BucketRow[];
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
  assess_sump: {
    body: AssessSumpBody;
    result: AssessSumpResult;
  };
  describe: {
    body: DescribeBody;
    result: DescribeResult;
  };
  fold_log: {
    body: FoldLogBody;
    result: FoldLogResult;
  };
  handover: {
    body: HandoverBody;
    result: HandoverResult;
  };
  merge_logs: {
    body: MergeLogsBody;
    result: MergeLogsResult;
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
  read_export: {
    body: ReadExportBody;
    result: ReadExportResult;
  };
  read_machine: {
    body: ReadMachineBody;
    result: ReadMachineResult;
  };
  read_quantity: {
    body: ReadQuantityBody;
    result: ReadQuantityResult;
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
 * Dip and reading, either alone or both.
 */
export interface AssessSumpBody {
  sump: SumpTyped;
  fluid?: FluidTyped;
  target?: TargetTyped;
  units?: Units;
  dip?: DipTyped;
  reading?: ReadingTyped;
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
 * factor: strength in per cent by volume for one Brix on the glass; without it there is no per cent. zero: what the instrument shows in water.
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
}
export interface TargetTyped {
  low: Typed;
  aim: Typed;
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
export interface DipTyped {
  depth: Typed;
  /**
   * Standard uncertainty 2, 3, 8, 15 mm (common practice, no source).
   */
  how?: "hard_floor" | "through_slot" | "running" | "chips";
  u?: Typed;
}
export interface ReadingTyped {
  shows: Typed;
  /**
   * Standard uncertainty 0.1, 0.2, 0.4, 0.8 Brix (common practice, no source).
   */
  how?: "digital" | "optical" | "optical_oily" | "blurred";
  u?: Typed;
}
export interface AssessSumpResult {
  notes: ("no_factor" | "above_full_mark" | "may_be_leaner")[];
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
  shown: {
    depth: Shown;
    volume: Shown;
    volume_u: Shown;
    room: Shown;
    full_volume: Shown;
    full_depth: Shown;
  };
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
 * Without a factor there is no strength_pct.
 */
export interface Strength {
  reading_brix: Measured;
  shown: {
    reading: Shown;
    factor?: Shown;
    strength?: Shown;
    low?: Shown;
    high?: Shown;
  };
  strength_pct?: Measured;
  /**
   * Against the target band; its edges belong to the band.
   */
  state?: "weak" | "in_range" | "strong";
}
/**
 * The section drawing.
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
}
/**
 * Possible but unusual: the page asks once, keeps what was typed and goes on.
 */
export interface Doubt {
  path: string;
  code: "unusual";
  got: Shown;
  usual_low: number;
  usual_high: number;
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
 * What this shop allows and knows: taking coolant out, the sump's own fluid as carrier, litres a day that leave with parts, buckets one person carries.
 */
export interface WaysTyped {
  draw_off?: boolean;
  own_fluid?: boolean;
  carry_out?: Typed;
  most_buckets?: number;
}
export interface StateNow {
  entry: EntryId;
  measured_at: Moment;
  age_d: number;
  certain: boolean;
  others: EntryId[];
  state: MachineStateContent;
}
export interface MachineStateContent {
  state: "in_use" | "watch" | "stopped" | "clean_out" | "out_of_service" | "shutdown";
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
/**
 * since: when the shift began. Notes and unknown additions count from then on; what is open, due, low or stopped counts however old it is.
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
   * Items: Sumps with room for at least one whole usable bucket, by their last dip; buckets is how many fit. Machines that are stopped or at rest are not among them.
   */
  low_sumps: {
    machine: EntryId;
    name: string;
    level: LevelNow;
    buckets: number;
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
 * A whole check just as it was typed. aim and fill_to_depth replace the machine's own for this once; concentrate_at_hand limits the recipe.
 */
export interface PlanCheckBody {
  machine: MachineTyped;
  dip: DipTyped;
  reading: ReadingTyped;
  aim?: Typed;
  fill_to_depth?: Typed;
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
  };
  after: Section;
  ways: WayShown[];
  doubts: Doubt[];
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
  };
  /**
   * The mark that may not be passed with the pump stopped; room above fill_to_l is used only by an alternative that says so.
   */
  never_above_l?: number;
  /**
   * Liquid that does not show on the stick: pipes, filters, a second tank.
   */
  hidden?: {
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
   * Lowest marks of pail and jug, size of the jug, and whether concentrate is measured by the jug or by the pail's own marks.
   */
  pail?: {
    first_mark_l?: number;
    jug_first_mark_l?: number;
    jug_max_l?: number;
    measure_by?: "jug" | "pail";
  };
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
    | "needs_stronger_premix"
    | "needs_weaker_mix"
    | "no_room"
    | "stock_short"
    | "taken_out_is_waste"
    | "bucket_heavy"
    | "many_buckets"
    | "large_change"
    | "strong_harms_skin"
    | "gloves_and_eyes"
    | "rough"
    | "sensitive_to_dip"
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
    | "new_charge";
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
    | "fetch_concentrate";
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
    | "needs_stronger_premix"
    | "needs_weaker_mix"
    | "no_room"
    | "stock_short"
    | "taken_out_is_waste"
    | "bucket_heavy"
    | "many_buckets"
    | "large_change"
    | "strong_harms_skin"
    | "gloves_and_eyes"
    | "rough"
    | "sensitive_to_dip"
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
  level_strength?: Shown;
  days?: number;
  run_in?: Shown;
  setting?: Shown;
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
  cautions: ("reading_open" | "may_be_out_of_band" | "gloves_and_eyes" | "nothing_to_pour")[];
  /**
   * Worst-case ends of the strength after the top-up.
   */
  ends?: {
    low_pct: number;
    high_pct: number;
  };
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
  };
  doubts: Doubt[];
  factor?: number;
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
  doubts: Doubt[];
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
 * instrument: zero in water, or what it shows of a known mix. sump: depths after poured litres.
 */
export interface CalibrationContent {
  of: "instrument" | "sump";
  instrument?: EntryId;
  zero?: Typed;
  shows?: Typed;
  reference?: Typed;
  temperature?: Typed;
  /**
   * @maxItems 200
   */
  points?: {
    depth: Typed;
    volume: Typed;
  }[];
  remarks?: Remarks;
}
/**
 * All optional, all as typed. machine is a copy of the set-up at that time, so that an old reading keeps its factor. of names the pour that a re-check looks after.
 */
export interface CheckContent {
  machine?: MachineTyped;
  dip?: DipTyped;
  reading?: ReadingTyped;
  aim?: Typed;
  fill_to_depth?: Typed;
  concentrate_at_hand?: Typed;
  /**
   * @maxItems 20
   */
  look?: Look[];
  ph?: Typed;
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
}
/**
 * Old fluid out and, where charge is given, a new charge in. left: litres that stayed.
 */
export interface CleanOutContent {
  finished: boolean;
  waste?: Typed;
  waste_note?: string;
  rinse?: Typed;
  left?: Typed;
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
export interface MachineSetContent {
  machine: MachineTyped;
  code?: ShortCode;
  remarks?: Remarks;
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
