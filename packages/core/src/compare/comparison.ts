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
  /** Its number in the score's list of spots, from 0. */
  readonly spot: number;
  /** Where it lies: travel, 0 closed to 1 open. */
  readonly travel: Travel;
  /** How many passes went over it, 1 or more. */
  readonly passes: number;
  /** How many of those passes showed it, at most `passes`. */
  readonly seen: number;
  /** Mean over the passes that showed it, as a fraction of the span, without sign, 0 or more. */
  readonly depth: Fraction;
  /** Standard uncertainty of the depth, fraction of the span, 0 or more. */
  readonly uncertainty: Fraction;
}

/** One spot in two recordings. */
export interface SpotChange {
  /** What became of the spot. */
  readonly outcome: SpotOutcome;
  /** What most of its findings are. */
  readonly kind: Finding['kind'];
  /** The spot as the recording before showed it; left out where it did not. */
  readonly before?: SpotState;
  /** The spot as the recording after showed it; left out where it did not. */
  readonly after?: SpotState;
  /** Depth after less depth before, fraction of the span; only where both recordings showed it. */
  readonly change?: Fraction;
  /** Standard uncertainty of the change, fraction of the span, 0 or more; only where there is a change. */
  readonly uncertainty?: Fraction;
  /** Why the other recording could not have shown it; only for `could-not-show`. */
  readonly because?: CannotShow;
  /** Probability, 0 to 1, that all passes of the other recording miss it though nothing changed; only for what appeared or vanished. */
  readonly missedByChance?: Fraction;
}

/** How a reading at a stop changed. */
export interface EndChange {
  /** Mean reading before, V. */
  readonly before: Volts;
  /** Mean reading after, V. */
  readonly after: Volts;
  /** After less before, V. */
  readonly change: Volts;
  /** Combined standard uncertainty of the change, V, 0 or more. */
  readonly uncertainty: Volts;
  /** Whether it exceeds twice its standard uncertainty. */
  readonly significant: boolean;
}

/** What changed between two sweeps of one sensor. */
export interface SweepComparison {
  /** The verdict of each recording, as each was scored by itself. */
  readonly verdict: { readonly before: Verdict; readonly after: Verdict };
  /** In the order of travel. */
  readonly spots: readonly SpotChange[];
  /**
   * How many findings belong to no spot, in each recording, 0 or more: those while the throttle rested, and further ones of a pass at one
   * place.
   */
  readonly outsideSpots: { readonly before: number; readonly after: number };
  /** How the reading at the closed stop changed; left out where one of the two could not be read. */
  readonly closed?: EndChange;
  /** How the reading at the open stop changed; left out where one of the two could not be read. */
  readonly open?: EndChange;
}
