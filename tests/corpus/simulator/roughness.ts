import type { Fault } from './plan.js';
import { type RandomStream, randomStream } from './randomStream.js';

type Rough = Extract<Fault, { kind: 'rough' }>;

/** Correlation time of the fresh contact noise, s. */
const freshFor = 1e-3;

/** Adds a rough patch: a relief fixed in travel, met again on each pass, and contact noise new on each pass. */
export function addRoughness(
  volts: Float64Array,
  travel: Float64Array,
  step: number,
  { from, to, fixed, fresh, grain }: Rough,
  random: RandomStream,
): void {
  const knots = Math.ceil((to - from) / grain) + 2;
  const own = randomStream(Math.floor(random.uniform() * 2 ** 31));
  const relief = Float64Array.from({ length: knots }, () => own.normal());
  const keep = Math.exp(-step / freshFor);
  const renew = Math.sqrt(1 - keep * keep);
  let noise = 0;
  for (let i = 0; i < volts.length; i++) {
    const x = travel[i]!;
    if (x < from || x > to) continue;
    noise = keep * noise + renew * random.normal();
    const at = (x - from) / grain;
    const below = Math.floor(at);
    const height = relief[below]! + (at - below) * (relief[below + 1]! - relief[below]!);
    const edge = Math.min(1, (x - from) / (2 * grain), (to - x) / (2 * grain));
    volts[i]! += edge * (fixed * height + fresh * noise);
  }
}
