import type { Travel } from '@truesweep/core';
import type { Motion } from './motion.js';
import { joinPassages, type Passage } from './passage.js';
import type { CorpusPlan, Fault } from './plan.js';

export type { Passage } from './passage.js';

/** Pieces of one fault that are no farther apart than this, s, are one event. */
const apart = 0.15;

/** When each fault of a plan was there, by the true travel; whether it was then seen is another matter. */
export function passages(plan: CorpusPlan, moved: Motion): readonly Passage[] {
  return plan.faults.flatMap((fault, at) => joinPassages(ofFault(fault, at, moved), apart));
}

function ofFault(fault: Fault, at: number, moved: Motion): readonly Passage[] {
  switch (fault.kind) {
    case 'worn-spot':
    case 'dead-spot':
    case 'rough':
      return withinStretch(at, moved, fault.from, fault.to);
    case 'cracked':
      return crossings(at, moved, fault.travel);
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

function withinStretch(fault: number, moved: Motion, from: Travel, to: Travel): readonly Passage[] {
  const { travel, step } = moved;
  const found: Passage[] = [];
  let first = -1;
  for (let i = 0; i <= travel.length; i++) {
    const inside = i < travel.length && travel[i]! >= from && travel[i]! <= to;
    if (inside && first < 0) first = i;
    if (inside || first < 0) continue;
    found.push(spanning(fault, moved, first * step, (i - 1) * step));
    first = -1;
  }
  return found;
}

function crossings(fault: number, moved: Motion, at: Travel): readonly Passage[] {
  const { travel, step } = moved;
  const found: Passage[] = [];
  for (let i = 1; i < travel.length; i++)
    if (travel[i - 1]! > at !== travel[i]! > at)
      found.push({ fault, start: (i - 1) * step, end: i * step, from: at, to: at });
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
