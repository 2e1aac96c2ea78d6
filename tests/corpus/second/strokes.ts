import type { Seconds, Travel } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/** A throttle's travel on a fine grid, with what moved it. */
export interface Strokes {
  readonly step: Seconds;
  readonly travel: Float64Array;
  /** Marks a closing by the spring and its rebounds. */
  readonly snap: Uint8Array;
}

type Shape = (part: number) => number;

const sigmoid: Shape = (part) => 1 / (1 + Math.exp(-9 * (part - 0.45)));
const halfWave: Shape = (part) => (1 - Math.cos(Math.PI * part)) / 2;

/** Ways to get from 0 to 1: smoothly, at even speed, in three steps with stops at any place, and late. */
const shapes: readonly ((random: RandomStream) => Shape)[] = [
  () => halfWave,
  () => (part) => part,
  (random) => {
    const stops = [0, random.between(0.15, 0.45), random.between(0.55, 0.85), 1];
    return (part) => {
      const step = Math.min(2, Math.floor(3 * part));
      const along = halfWave(Math.min(1, (3 * part - step) / 0.75));
      return stops[step]! + along * (stops[step + 1]! - stops[step]!);
    };
  },
  () => (part) => (sigmoid(part) - sigmoid(0)) / (sigmoid(1) - sigmoid(0)),
];

export interface Manner {
  readonly cycles: number;
  /** How long a stroke takes, s. */
  readonly stroke: readonly [Seconds, Seconds];
}

/** Openings by hand, closings by hand or by spring, a wavering hand. */
export function drawStrokes(manner: Manner, step: Seconds, random: RandomStream): Strokes {
  const travel: number[] = [];
  const snap: number[] = [];
  const moving: boolean[] = [];
  const drawShape = random.pick(shapes);
  const spring = random.chance(0.5);
  const add = (seconds: Seconds, place: Shape, what: 'rest' | 'hand' | 'snap'): void => {
    const points = Math.round(seconds / step);
    for (let i = 0; i < points; i++) {
      travel.push(place(i / points));
      snap.push(what === 'snap' ? 1 : 0);
      moving.push(what === 'hand');
    }
  };
  const atClosed = (): Travel => random.between(0, 0.004);
  let closed = atClosed();
  add(random.between(0.4, 1.5), () => closed, 'rest');
  for (let cycle = 0; cycle < manner.cycles; cycle++) {
    const from = closed;
    const opening = drawShape(random);
    add(random.logBetween(...manner.stroke), (part) => from + (1 - from) * opening(part), 'hand');
    add(random.between(0.2, 1), () => 1, 'rest');
    closed = atClosed();
    const to = closed;
    if (spring && cycle > 0) {
      add(random.between(0.03, 0.12), (part) => 1 - (1 - to) * part * part, 'snap');
      addRebounds(to, add, random);
    } else {
      const closing = drawShape(random);
      add(random.logBetween(...manner.stroke), (part) => 1 - (1 - to) * closing(part), 'hand');
    }
    add(random.between(0.4, 1.2), () => to, 'rest');
  }
  return { step, travel: wavering(travel, moving, step, random), snap: Uint8Array.from(snap) };
}

/** Parabolas, each lower and shorter than the one before. */
function addRebounds(
  to: Travel,
  add: (seconds: Seconds, place: Shape, what: 'snap') => void,
  random: RandomStream,
): void {
  const restitution = random.between(0.3, 0.6);
  let height = random.between(0.01, 0.08);
  let seconds = random.between(0.01, 0.03);
  for (; height > 0.001; height *= restitution ** 2) {
    const top = height;
    add(seconds, (part) => to + 4 * top * part * (1 - part), 'snap');
    seconds *= restitution;
  }
}

/** Two waves on what a hand moves: a tremor and a slow sway. */
function wavering(
  travel: readonly number[],
  moving: readonly boolean[],
  step: Seconds,
  random: RandomStream,
): Float64Array {
  const waves = [
    { size: random.logBetween(2e-4, 3e-3), omega: 2 * Math.PI * random.between(6, 11) },
    { size: random.logBetween(5e-4, 6e-3), omega: 2 * Math.PI * random.between(0.4, 1.5) },
  ];
  return Float64Array.from(travel, (place, i) => {
    if (!moving[i]) return place;
    const free = Math.max(0, Math.min(1, 6 * place, 6 * (1 - place)));
    return waves.reduce(
      (sum, { size, omega }) => sum + free * size * Math.sin(omega * i * step),
      place,
    );
  });
}
