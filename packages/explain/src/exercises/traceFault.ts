import type { SimulatedFault, Travel } from '@truesweep/core';
import type { Draws } from './draws.js';
import type { ExerciseLevel } from './exercise.js';

/** What a sweep is drawn with, by the simulator's names. */
export type FaultKind = SimulatedFault['kind'];

/** In the order in which they are offered. */
export const faultKinds: readonly FaultKind[] = [
  'worn-spot',
  'loose-connection',
  'interference',
  'shifted-track',
  'dead-spot',
  'rough-track',
];

/** A stretch of time, s. */
export interface Passage {
  readonly start: number;
  readonly end: number;
}

/** A fault, and where it lies if it is at one place: travel, 0 closed to 1 open. */
interface DrawnFault {
  readonly fault: SimulatedFault;
  readonly travel?: Travel;
}

/** A fault to find: plain to see at an easy level, also a stretch or a partial loss of contact on some passes at others. */
export function drawnFault(
  draw: Draws,
  level: ExerciseLevel,
  passes: readonly Passage[],
): DrawnFault {
  const kind = draw.one(level === 'easy' ? faultKinds.slice(0, 4) : faultKinds);
  const travel = draw.one([draw.stepped(0.2, 0.38, 0.01), draw.stepped(0.62, 0.8, 0.01)]);
  const half = draw.stepped(0.05, 0.07, 0.005);
  const [from, to] = [travel - half, travel + half];
  switch (kind) {
    case 'worn-spot': {
      const isPlain = level === 'easy';
      const ohms = isPlain ? Infinity : draw.one([2e6, 5e6, Infinity]);
      return {
        fault: { kind, travel, width: 0.02, ohms, chance: isPlain ? 1 : 0.7 },
        travel,
      };
    }
    case 'loose-connection':
      return { fault: { kind, at: moments(draw, passes) } };
    case 'interference':
      return {
        fault: {
          kind,
          at: moments(draw, passes).map((at, i) => ({ ...at, volts: spike(draw, i) })),
        },
      };
    case 'shifted-track': {
      // Nearer to the closed stop two jumps look like one dip of the hand.
      const away = Math.max(travel, 0.3);
      return { fault: { kind, travel: away, shift: draw.one([-0.1, -0.08, 0.08]) }, travel: away };
    }
    case 'dead-spot':
      return { fault: { kind, from, to }, travel };
    case 'rough-track':
      return { fault: { kind, from, to, volts: draw.one([0.15, 0.2]) }, travel };
  }
}

/** A voltage added for a moment: up and down in turns. */
const spike = (draw: Draws, i: number): number =>
  draw.one([0.5, 0.6, 0.8]) * (i % 2 === 0 ? 1 : -1);

/** Moments in passes, and one while the throttle rests after the first pass. */
function moments(draw: Draws, passes: readonly Passage[]) {
  const seconds = draw.one([0.02, 0.03]);
  const inPasses = passes
    .filter(() => draw.uniform() < 0.6)
    .map(({ start, end }) => start + (end - start) * draw.stepped(0.3, 0.7, 0.02));
  const atRest = passes[0]!.end + 0.1;
  return [atRest, ...inPasses].sort((a, b) => a - b).map((time) => ({ time, seconds }));
}
