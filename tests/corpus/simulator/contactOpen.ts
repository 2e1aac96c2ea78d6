import type { Fault } from './plan.js';
import type { RandomStream } from './randomStream.js';
import { telegraph } from './telegraph.js';

type WornSpot = Extract<Fault, { kind: 'worn-spot' }>;
type LooseConnection = Extract<Fault, { kind: 'loose-connection' }>;

/** A return into the spot sooner than this, s, is the same pass over it. */
const samePass = 0.15;

/** Marks the steps at which a worn spot's contact is open. */
export function openInSpot(
  travel: Float64Array,
  step: number,
  { from, to, chatter, chance }: WornSpot,
  random: RandomStream,
): Uint8Array {
  const open = new Uint8Array(travel.length);
  const opened = chatter ? telegraph(chatter, step, random) : () => true;
  let lastInside = Number.NEGATIVE_INFINITY;
  let hit = false;
  for (let i = 0; i < travel.length; i++) {
    const x = travel[i]!;
    if (x < from || x > to) continue;
    if ((i - lastInside) * step > samePass) hit = random.chance(chance);
    lastInside = i;
    if (hit && opened()) open[i] = 1;
  }
  return open;
}

/** Marks the steps at which a loose connection is interrupted. */
export function openInBursts(
  length: number,
  step: number,
  { bursts }: LooseConnection,
  random: RandomStream,
): Uint8Array {
  const open = new Uint8Array(length);
  for (const { time, seconds, chatter } of bursts) {
    const opened = telegraph(chatter, step, random);
    const last = Math.min(length - 1, Math.round((time + seconds) / step));
    for (let i = Math.round(time / step); i <= last; i++) if (opened()) open[i] = 1;
  }
  return open;
}
