import type { RandomStream } from './randomStream.js';

/**
 * White noise through a second-order resonator or low-pass (two-pole recursion), scaled to unit standard deviation.
 *
 * @param hertz Natural frequency; @param damping 0.7 for a low-pass, small for a narrow band.
 */
export function filteredNoise(
  random: RandomStream,
  length: number,
  step: number,
  hertz: number,
  damping: number,
): Float64Array {
  const radius = Math.exp(-2 * Math.PI * hertz * damping * step);
  const angle = 2 * Math.PI * hertz * Math.sqrt(1 - damping * damping) * step;
  const first = 2 * radius * Math.cos(angle);
  const second = -radius * radius;
  const noise = new Float64Array(length);
  const warmUp = Math.ceil(3 / (2 * Math.PI * hertz * damping * step));
  let [last, before, squares] = [0, 0, 0];
  for (let i = -warmUp; i < length; i++) {
    const value = first * last + second * before + random.normal();
    before = last;
    last = value;
    if (i < 0) continue;
    noise[i] = value;
    squares += value * value;
  }
  const scale = 1 / Math.sqrt(squares / length);
  for (let i = 0; i < length; i++) noise[i]! *= scale;
  return noise;
}
