import type { Travel } from '@truesweep/core';
import { effectiveTravel, type WiperTravel } from './effectiveTravel.js';
import type { Motion } from './motion.js';
import { joinPassages, type Passage } from './passage.js';
import type { CorpusPlan, Fault } from './plan.js';

export type { Passage } from './passage.js';

/** Pieces of one fault that are no farther apart than this, s, are one event. */
const apart = 0.15;

/** When each fault of a plan was there, by the true travel; whether it was then seen is another matter. */
export function passages(plan: CorpusPlan, moved: Motion): readonly Passage[] {
  const wiper = effectiveTravel(moved.travel, moved.step, plan.faults);
  return plan.faults.flatMap((fault, at) => joinPassages(ofFault(fault, at, moved, wiper), apart));
}

function ofFault(
  fault: Fault,
  at: number,
  moved: Motion,
  { onTrack, wiper }: WiperTravel,
): readonly Passage[] {
  switch (fault.kind) {
    case 'worn-spot':
    case 'rough':
      return withinStretch(at, moved, wiper, fault.from, fault.to);
    case 'dead-spot':
      return withinStretch(at, moved, onTrack, fault.from, fault.to);
    case 'cracked':
      return crossings(at, moved, wiper, fault.travel);
    case 'slipped':
      return [spanning(at, moved, fault.time, fault.time)];
    case 'loose-connection':
      return fault.bursts.map(({ time, seconds }) => spanning(at, moved, time, time + seconds));
    case 'interference':
      return fault.bursts.map(({ time, decay }) => spanning(at, moved, time, time + 6 * decay));
    case 'no-output':
      return [];
  }
}

function withinStretch(
  fault: number,
  moved: Motion,
  place: Float64Array,
  from: Travel,
  to: Travel,
): readonly Passage[] {
  const { step } = moved;
  const found: Passage[] = [];
  let first = -1;
  for (let i = 0; i <= place.length; i++) {
    const inside = i < place.length && place[i]! >= from && place[i]! <= to;
    if (inside && first < 0) first = i;
    if (inside || first < 0) continue;
    found.push(spanning(fault, moved, first * step, (i - 1) * step));
    first = -1;
  }
  return found;
}

function crossings(
  fault: number,
  moved: Motion,
  place: Float64Array,
  at: Travel,
): readonly Passage[] {
  const { step } = moved;
  const found: Passage[] = [];
  for (let i = 1; i < place.length; i++)
    if (place[i - 1]! > at !== place[i]! > at)
      found.push(spanning(fault, moved, (i - 1) * step, i * step));
  return found;
}

function spanning(fault: number, { travel, step }: Motion, start: number, end: number): Passage {
  const first = Math.max(0, Math.floor(start / step));
  const last = Math.min(travel.length - 1, Math.ceil(end / step));
  let [from, to] = [travel[first] ?? 0, travel[first] ?? 0];
  for (let i = first; i <= last; i++) {
    from = Math.min(from, travel[i]!);
    to = Math.max(to, travel[i]!);
  }
  return { fault, start, end, from, to };
}
