import type { Finding } from '../finding/finding.ts';
import type { Cause, Estimate } from '../quantity/estimate.ts';
import type { DriftOver } from './book.ts';
import type { Cost, FilmRatio, SurfaceShed } from './consequences.ts';
import type { Bridge, Moved } from './campaign.ts';
import type { ClaimWord, Clause } from './claim.ts';
import type { At, Cell, ToLoad } from './derived.ts';
import type { Factorial } from './factorial.ts';
import type { QuantityName } from './figures.ts';
import type { Graded, GradeKind, StepName } from './flow.ts';
import type { TrialKind } from './plan.ts';

/** A loaded run brought to load and speed of the plan and to the reference ambient, by its own measured slope of total heat. */
export interface Correction {
  readonly run: string;
  /** Ambient that its final temperature was stated for, and the one it was brought to. */
  readonly from_K: number;
  readonly ambient_K: number;
  /** The series states it; otherwise it is the mean of its loaded runs. */
  readonly stated: boolean;
  readonly slope_W_K: number;
  /** Kelvin of final temperature for one of ambient. */
  readonly answer: number;
  /** Load and speed before it, as this run has them; null where nothing tells. */
  readonly toLoad: ToLoad | null;
  /** What was added to the figure of the run, all in all. SI. */
  readonly by: number;
}

/** A cell's figure: the mean of its refits, with the scatter of refitting in it. */
export interface CellFigure {
  readonly cell: Cell;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly estimate: Estimate | null;
  readonly bound: null | { readonly side: 'above' | 'below'; readonly at: number };
  readonly runs: readonly string[];
  readonly notes: readonly string[];
  /** Null when it may be compared; otherwise why neither it nor any other cell of its group is. */
  readonly unranked: string | null;
  /** How its runs were brought to the reference ambient; absent where none was. */
  readonly corrections?: readonly Correction[];
  /** Absent where it was run in the first campaign only. */
  readonly moved?: readonly Moved[];
  /** Why a comparison of its group is indicative only; empty when nothing stands in the way. */
  readonly indicative: readonly string[];
}

/** An interval by trials (JCGM 101): causes are drawn once a trial for the whole series. SI. */
export interface ByTrials {
  readonly interval: readonly [number, number];
  /** Standard deviation of the trials; null where a t of two degrees or fewer has none. */
  readonly u: number | null;
  readonly draws: number;
  /** False when the ends had not settled to the numerical tolerance at the most draws allowed. */
  readonly met: boolean;
  /** Both ends of the linear interval lie within a tenth of u of these (JCGM 101, clause 8, with a tolerance of ours). */
  readonly agrees: boolean;
  /** Shortest interval instead of equal tails: the outcome is skewed. */
  readonly shortest: boolean;
}

/** A difference held against the margin that was declared before its data. SI. */
export interface AgainstMargin {
  readonly margin: number;
  /** Interval of two one-sided tests: 90 % at a family level of 5 %. */
  readonly interval: readonly [number, number];
  readonly equal: boolean;
  /** Null where neither more nor less is a merit of the quantity. */
  readonly noWorse: boolean | null;
}

/** One cell against another: value less baseline. */
export interface Effect {
  readonly cell: Cell;
  readonly against: Cell;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly estimate: Estimate;
  /** Own 95 % interval of this difference, SI: the linear one, or that by trials where the two disagree. */
  readonly interval: readonly [number, number];
  /** Null where no trials were run. */
  readonly trials: ByTrials | null;
  /** Null where no margin was declared before the data. */
  readonly margin: AgainstMargin | null;
  /** Why it is indicative only: then nothing is called separated. */
  readonly indicative: readonly string[];
  /** Simultaneous interval over the family of the standing; the one that separates. */
  readonly simultaneous: readonly [number, number];
  readonly k: number;
  readonly dof: number;
  readonly separated: boolean;
  readonly basis:
    | 'same litres'
    | 'same level'
    | 'same litres and level'
    | 'fill is the subject'
    | 'oil is the subject'
    | 'tilt is the subject'
    /** Several things differ, and the claim names each of them. */
    | 'named by the claim';
  readonly runs: readonly string[];
  readonly againstRuns: readonly string[];
  readonly moved?: readonly Moved[];
  readonly notes: readonly string[];
}

/** A pair that is not compared, and why. */
export interface Refusal {
  readonly cell: Cell;
  readonly against: Cell;
  readonly quantity: QuantityName;
  readonly reasons: readonly string[];
}

export interface StandingRow {
  readonly cell: Cell;
  readonly effect: Effect | null;
  readonly baseline: boolean;
  readonly letters: string;
  /** First and last place it may take, counted from the lowest; null where it is not ranked. */
  readonly places: readonly [number, number] | null;
  /** Share of the trials in which this row lies lowest of those ranked; null without trials. Never a verdict. */
  readonly lowest: number | null;
  readonly refused: readonly string[];
}

/** One linear drift common to all cells, taken out of them. */
export interface Drift {
  /** Per hour of running or clock time, or per run. SI. */
  readonly slope: number;
  readonly u: number;
  readonly separated: boolean;
  readonly over: DriftOver;
  /** What it comes to between the first and the last run. */
  readonly inAll: number;
}

/** Scatter of the baseline's own runs, after the drift, held against that of the others. */
export interface Wander {
  readonly runs: number;
  /** Standard deviation of the baseline's runs, and what it may be. SI. */
  readonly s: number;
  readonly against: number;
  /** Chance of so much, were the baseline no worse than the others. */
  readonly p: number;
  readonly wandered: boolean;
}

/** Whether a day adds scatter to repeats. SI. */
export interface DayScatter {
  readonly days: number;
  readonly ratio: number;
  readonly p: number;
  readonly s_day: number;
  readonly separated: boolean;
}

/** One table: one quantity at one condition, one oil. Rows in order of article id, then fill. */
export interface Standing {
  readonly id: string;
  readonly trial: TrialKind;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly oil: string;
  readonly against: Cell;
  readonly rows: readonly StandingRow[];
  /** Pooled standard deviation of one refit, its degrees of freedom; null where causes stand in for repeats. */
  readonly repeatability: { readonly s: number; readonly dof: number } | null;
  /** Slope over the order of runs, per run, with its standard uncertainty. */
  readonly drift: Drift | null;
  /** How far the baseline wanders from itself; null where it was not run often enough to say. */
  readonly wander: Wander | null;
  /** Whether days add to the scatter of refits; null where the plan does not allow to tell. */
  readonly days: DayScatter | null;
  /** Why the whole table is indicative only; empty when nothing stands in the way. */
  readonly indicative: readonly string[];
  /** Smallest difference that these runs could have separated. */
  readonly smallest: number | null;
  readonly notes: readonly string[];
  /** The later campaign whose own table this is; absent otherwise. */
  readonly campaign?: string;
}

/** How far two observers agree on one kind of grade, over every step that both could grade. */
export interface Agreement {
  readonly grade: GradeKind;
  readonly observers: readonly [string, string];
  /** Pairs; `ng` of either takes a pair out and adds no 0. */
  readonly n: number;
  /** Items that one or both could not grade. */
  readonly notGraded: number;
  readonly equal: number;
  readonly withinOne: number;
  /** Null when all grades of one observer are the same: there is no spread to agree on. */
  readonly kappa: Estimate | null;
  /** Least and largest kappa when one run after the other is left out: steps of one run are not independent. */
  readonly leavingOneRunOut: readonly [number, number] | null;
  readonly usable: boolean;
  /** "kappa 0.42 is below the 0.6 of the series" */
  readonly why: string;
  /** rows: first observer's grade 0–4, columns: the second's. */
  readonly table: readonly (readonly number[])[];
  readonly differ: readonly {
    readonly run: string;
    readonly step: StepName;
    readonly grades: readonly [Graded, Graded];
    readonly joint: Graded | null;
    readonly clip: string | null;
    readonly from_s: number | null;
  }[];
}

/** What the outside surface of an article alone can take off the final rise: a model estimate, as a band. K, above 0 is cooler. */
export interface CoverBound {
  readonly low_K: number;
  readonly high_K: number;
  /** The measured gain by the shed lies beyond it, with its whole interval. */
  readonly exceeded: boolean;
}

/** A difference in final rise in two parts that add up to it. Negative is cooler than the baseline. */
export interface Split {
  readonly cell: Cell;
  readonly against: Cell;
  readonly byHeatMade: Estimate;
  readonly byShed: Estimate;
  /** Of the whole difference, by the heat made; null where the whole is not separated from nothing. */
  readonly share: Estimate | null;
  /** Through the identity itself, trial by trial; null where no trials were run. */
  readonly trials: { readonly byHeatMade: ByTrials; readonly byShed: ByTrials; readonly share: ByTrials | null } | null;
  /** Null where the surfaces are not stated; then `coverUntold` says what to write, if a gain stands to be explained. */
  readonly cover: CoverBound | null;
  readonly coverUntold: string | null;
  readonly runs: readonly string[];
  readonly notes: readonly string[];
}

/** A choice that changes what an article against the baseline comes to: found by the tool, unasked. */
export interface Depends {
  readonly article: string;
  readonly oil: string;
  readonly tilt_ratio: number;
  readonly choice: 'limit' | 'temperature' | 'fill' | 'quantity';
  /** `turns`: separated both ways. `in one only`: separated under one option and not under another. */
  readonly kind: 'turns' | 'in one only';
  /** Every option of the choice that was compared, in a fixed order. */
  readonly options: readonly Effect[];
}

/** One clause of a claim held against the runs. */
export interface JudgedClause {
  readonly clause: Clause;
  /** Subject less against, or the share itself; null where it cannot be told. SI. */
  readonly estimate: Estimate | null;
  /** Its own 95 % interval, SI: the linear one, or that by trials where the two disagree. */
  readonly interval: readonly [number, number] | null;
  readonly trials: ByTrials | null;
  readonly word: ClaimWord;
  /** The word when every claim made before its data is one of a family (Holm); null where it is the same. */
  readonly inFamily: ClaimWord | null;
  /** Why it cannot be told; empty otherwise. */
  readonly why: readonly string[];
  readonly runs: readonly string[];
  /** Smallest difference these runs could have separated; null where nothing was compared. SI. */
  readonly smallest: number | null;
  /** Refits each that would separate the threshold from what was found, with this chance; null where more than 1000 or not told. */
  readonly needed: readonly { readonly chance: number; readonly refits: number | null }[];
}

export interface JudgedClaim {
  readonly claim: string;
  readonly clauses: readonly JudgedClause[];
  readonly word: ClaimWord;
  /** Made on or after the day of the first run it rests on. */
  readonly late: boolean;
  /** Why its word is indicative only; empty when nothing stands in the way. */
  readonly indicative: readonly string[];
}

export interface ComparedSeries {
  /** What the trials are drawn from, printed; null without trials. */
  readonly seed: string | null;
  readonly claims: readonly JudgedClaim[];
  readonly splits: readonly Split[];
  readonly films: readonly FilmRatio[];
  readonly costs: readonly Cost[];
  readonly surfaces: readonly SurfaceShed[];
  readonly depends: readonly Depends[];
  readonly factorials: readonly Factorial[];
  readonly agreements: readonly Agreement[];
  readonly cells: readonly CellFigure[];
  readonly effects: readonly Effect[];
  readonly refusals: readonly Refusal[];
  readonly standings: readonly Standing[];
  readonly bridges?: readonly Bridge[];
  readonly causes: readonly Cause[];
  readonly findings: readonly Finding[];
}
