import {
  type Circuit,
  type Expectation,
  expectation,
  type Seconds,
  type SimulatedMovement,
  type Sweep,
  type SweepPlan,
  simulateSweep,
  type Travel,
} from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import { bench } from './bench.js';
import type { LessonSlider, Places } from './lesson.js';

/** Each place of the second slider is so much of the travel. */
const spreadStep: Travel = 0.05;

export const verdictSliders: readonly LessonSlider[] = [
  { name: 'passes', label: lessonWords.passes, most: 6, first: 5 },
  { name: 'spread', label: lessonWords.spread, most: 12, first: 0 },
];

const circuit: Circuit = { ...bench, load: { pullDown: 10e6 } };

/** What a sound sensor reads on that bench. */
export const verdictExpected: Expectation = expectation(circuit, {
  source: 0.02,
  closedPosition: 0.02,
  openPosition: 0.02,
});

const [stroke, rest] = [1, 0.4] as const;
const round: readonly SimulatedMovement[] = [
  { kind: 'turn', to: 1, seconds: stroke, unevenness: 0.01 },
  { kind: 'hold', seconds: rest },
  { kind: 'turn', to: 0, seconds: stroke, unevenness: 0.01 },
  { kind: 'hold', seconds: rest },
];
const plan: SweepPlan = {
  circuit,
  movements: [{ kind: 'hold', seconds: rest }, ...round, ...round, ...round],
  recorder: { interval: 0.002, noise: 0.002, resolution: 0.001 },
  seed: 11,
};
/** The same passes without a fault: they tell when each is where. */
const sound = simulateSweep(plan);
const middle: Travel = 0.4;
const dropoutSeconds: Seconds = 0.02;

/** What the sliders stand for. */
export const verdictFacts = ([seen = 0, spread = 0]: Places) => ({
  seen,
  spread: spread * spreadStep,
});

/** Six passes, some of which show a dropout, all at one travel or spread over some of it. */
export function verdictAt(places: Places): { readonly sweep: Sweep } {
  const { seen, spread } = verdictFacts(places);
  const at = Array.from({ length: seen }, (_, pass) => {
    // Spread in no order: the first low, the second high, and so on inward.
    const part =
      seen > 1 ? (pass % 2 === 0 ? pass / 2 : seen - 1 - (pass - 1) / 2) / (seen - 1) : 0.5;
    const wanted = middle + spread * (part - 0.5);
    return { time: timeAt(pass, wanted), seconds: dropoutSeconds };
  });
  return simulateSweep({ ...plan, faults: [{ kind: 'loose-connection', at }] });
}

/** When a pass is at a travel, s. */
function timeAt(pass: number, wanted: Travel): Seconds {
  const { sweep, travel } = sound;
  const begins = rest + pass * (stroke + rest);
  let [found, least]: [Seconds, Travel] = [begins, 1];
  for (const [i, at] of travel.entries()) {
    const now = sweep.time[i] ?? 0;
    const off = Math.abs(at - wanted);
    if (now >= begins && now <= begins + stroke && off < least) [found, least] = [now, off];
  }
  return found - dropoutSeconds / 2;
}
