import { median } from '../statistics/median.js';
import type { Seconds, Volts } from '../units.js';
import { fewestSamples, mainsPeriods } from './limits.js';

/** Of blocks as long as whole periods of mains the quietest quarter are looked at: the throttle rests in them. */
const quietest = 0.25;
const fewestBlocks = 6;
/** Of smoothed noise the mean square of second differences grows so with four times their reach, from the first so many reaches on. */
const leastGrowth = 1.7;
const mostGrowth = 16;
const fewestReaches = 2;
/** Then it stays; of hum it falls below this part of what it was before. */
const leastKept = 0.5;
/** Noise is told from rounding from this part of a step's square on. */
const leastNoise = 0.5;

/**
 * How long a recorder, or what it was exported by, smoothed over: the noise of samples that are each a mean or a median of many hangs
 * together. Of white noise second differences are as large at any reach; of a mean over w samples their mean square is 4k/w of the
 * noise's own at a reach of k, and 6 times it from w on. Rounding adds half a step's square. 0 where noise below one step, hum or slow
 * tremor hide it, and for a mean of five samples or fewer, which loses little.
 */
export function smoothedOver(signal: Float64Array, interval: Seconds, resolution: Volts): Seconds {
  const length = Math.round(mainsPeriods / interval);
  const blocks = Math.floor(signal.length / length);
  if (length < fewestSamples || blocks < fewestBlocks) return 0;
  const quiet = Array.from({ length: blocks }, (_, i) => {
    const block = signal.subarray(i * length, (i + 1) * length);
    return { block, range: rangeOf(block) };
  })
    .sort((a, b) => a.range - b.range)
    .slice(0, Math.max(fewestBlocks, Math.ceil(quietest * blocks)));
  const lags = Array.from({ length: Math.floor(Math.log2(length / 4)) + 1 }, (_, i) => 2 ** i);
  const squareAt = (lag: number): number =>
    median(Float64Array.from(quiet, ({ block }) => meanSquare(block, lag))) - resolution ** 2 / 2;
  const squares: number[] = [];
  const growth = (i: number): number => {
    while (squares.length <= i + 2 && squares.length < lags.length)
      squares.push(squareAt(lags[squares.length]!));
    return squares[i + 2]! / squares[i]!;
  };
  let reaches = 0;
  while (growth(reaches) >= leastGrowth && growth(reaches) <= mostGrowth) reaches++;
  // White noise, which most recorders have, is told by its first reaches.
  if (reaches < fewestReaches) return 0;
  squares.push(...lags.slice(squares.length).map(squareAt));
  const noise = squares[reaches + 1]! / 6;
  const isHum = squares.some((one, i) => one < leastKept * Math.max(...squares.slice(0, i)));
  if (isHum || noise < leastNoise * resolution ** 2) return 0;
  const samples = (noise * 4 * 7) / (squares[0]! + squares[1]! + squares[2]!);
  // It hangs together over half of the reach up to which it grew, at the least.
  return interval * Math.max(samples, 2 ** reaches);
}

function rangeOf(block: Float64Array): Volts {
  let [low, high] = [Infinity, -Infinity];
  for (const volts of block) {
    if (volts < low) low = volts;
    if (volts > high) high = volts;
  }
  return high - low;
}

/** Of second differences that reach over so many samples to either side. */
function meanSquare(block: Float64Array, lag: number): number {
  let sum = 0;
  for (let i = lag; i + lag < block.length; i++)
    sum += (block[i - lag]! - 2 * block[i]! + block[i + lag]!) ** 2;
  return sum / (block.length - 2 * lag);
}
