import type { Finding, Verdict } from '../score/score.js';
import type { Fraction, Travel, Volts } from '../units.js';

/** How a spot is now, against how it was. */
export type SpotOutcome = 'appeared' | 'vanished' | 'grew' | 'shrank' | 'stayed' | 'could-not-show';

/**
 * Why a recording could not have shown a spot: it lies where the load hides it, no pass went over it, it is shallower
 * than what was visible, or shorter than the time between samples.
 */
export type CannotShow = 'blind' | 'not-passed' | 'too-shallow' | 'too-short';

/** A spot as one recording showed it. */
export interface SpotState {
  /** Its number in the score's list of spots. */
  readonly spot: number;
  readonly travel: Travel;
  /** How many passes went over it, and how many of them showed it. */
  readonly passes: number;
  readonly seen: number;
  /** Mean over the passes that showed it, as a fraction of the span, without sign; with its standard uncertainty. */
  readonly depth: Fraction;
  readonly uncertainty: Fraction;
}

/** One spot in two recordings. */
export interface SpotChange {
  readonly outcome: SpotOutcome;
  /** What most of its findings are. */
  readonly kind: Finding['kind'];
  /** Left out where that recording did not show it. */
  readonly before?: SpotState;
  readonly after?: SpotState;
  /** Depth after less depth before, fraction of the span, with its standard uncertainty; where both showed it. */
  readonly change?: Fraction;
  readonly uncertainty?: Fraction;
  /** Why the other recording could not have shown it; only for `could-not-show`. */
  readonly because?: CannotShow;
  /** Probability that all passes of the other recording miss it though nothing changed; for what appeared or vanished. */
  readonly missedByChance?: Fraction;
}

/** How a reading at a stop changed. */
export interface EndChange {
  readonly before: Volts;
  readonly after: Volts;
  readonly change: Volts;
  /** Combined standard uncertainty of the change. */
  readonly uncertainty: Volts;
  /** Whether it exceeds twice its standard uncertainty. */
  readonly significant: boolean;
}

/** What changed between two sweeps of one sensor. */
export interface SweepComparison {
  readonly verdict: { readonly before: Verdict; readonly after: Verdict };
  /** In the order of travel. */
  readonly spots: readonly SpotChange[];
  /** Findings that belong to no spot: those while the throttle rested, and further ones of a pass at one place. */
  readonly outsideSpots: { readonly before: number; readonly after: number };
  /** Left out where one of the two could not be read. */
  readonly closed?: EndChange;
  readonly open?: EndChange;
}
