import type { BrokenState } from '../contact/readingCost.js';
import { type Motion, type MotionState, newMotionState } from '../motion/predict.js';

/** A change that a hypothesis went through: a contact broke, was sound again, jumped; the throttle was thrown, and in hand again. */
export type Change = BrokenState | 'sound' | 'stood' | 'jump' | 'thrown' | 'in-hand';

/** The changes of a hypothesis, the last one first. */
export interface History {
  readonly before: History | undefined;
  readonly bin: number;
  readonly change: Change;
}

/** One explanation of a recording up to a bin. */
export interface Hypothesis extends MotionState {
  /** −ln of its likelihood and of what it takes for granted, nats. */
  cost: number;
  motion: Motion;
  contact: BrokenState | 'sound';
  /** Reading before, as far off the path as the bin went, or the level at which it stuck; and the bin at which the contact broke. */
  last: number;
  /** The reading before that one, in a contact that broke; NaN where there is none. */
  beforeLast: number;
  since: number;
  /** A stop, or whatever throws the throttle, was at work. */
  struck: boolean;
  thrown: boolean;
  /** The bin since which it is thrown, or in hand again; −1 where it began so. */
  turnedAt: number;
  history: History | undefined;
  /** What the bin changed; it joins the history if the hypothesis is kept. */
  change: Change | undefined;
}

export function newHypothesis(): Hypothesis {
  return {
    ...newMotionState(),
    cost: 0,
    motion: 'hand',
    contact: 'sound',
    last: 0,
    beforeLast: Number.NaN,
    since: 0,
    struck: false,
    thrown: false,
    turnedAt: -1,
    history: undefined,
    change: undefined,
  };
}
