import type { Seconds } from '../units.js';
import type { Excursion, Span } from './departure.js';
import type { Levels } from './levels.js';
import { lineAcross } from './lineAcross.js';
import { sidesOfLine } from './sidesOfLine.js';

/** Excursions of one run lie no farther apart than this. */
const betweenRuns: Seconds = 0.03;
/** A hand hardly leaves a straight line within this time. */
const longestRun: Seconds = 0.25;
/** A run is more one-sided, beyond what rounding does, where its lesser side is so many times smaller. */
const clearly = 1.05;

/**
 * Draws straight lines over runs of excursions, where that makes a run more one-sided. A contact that is lifted most of the
 * time draws the path toward the lifted level, and its returns look like pulses to the other side.
 *
 * @param path Level of the path, bin by bin; changed in place.
 * @param fast Marks the bins of fast moves, in which nothing is drawn.
 * @param jumps Where the path itself jumps, over which nothing is drawn either.
 * @returns Whether anything was drawn.
 */
export function drawOverRuns(
  levels: Levels,
  path: Float64Array,
  excursions: readonly Excursion[],
  fast: Uint8Array,
  jumps: readonly Span[],
): boolean {
  const { time } = levels;
  let isDrawn = false;
  for (const run of runsOf(time, excursions)) {
    const from = run[0]!.from - 1;
    const to = run[run.length - 1]!.to + 1;
    const isOne = run.length === 1 && run[0]!.swings === 0;
    if (isOne || time[to]! - time[from]! > longestRun) continue;
    if (fast[from] || fast[to]) continue;
    if (jumps.some((one) => one.from <= to && one.to >= from)) continue;
    const line = lineAcross(levels, from, to);
    if (!line) continue;
    const before = lesserSide(levels, from, to, (i) => path[i]!);
    if (lesserSide(levels, from, to, line) > before / clearly) continue;
    for (let i = from; i <= to; i++) path[i] = line(i);
    isDrawn = true;
  }
  return isDrawn;
}

function runsOf(time: Float64Array, excursions: readonly Excursion[]): readonly Excursion[][] {
  const runs: Excursion[][] = [];
  for (const one of excursions) {
    const run = runs[runs.length - 1];
    const last = run?.[run.length - 1];
    if (run && last && time[one.from]! - time[last.to]! <= betweenRuns) run.push(one);
    else runs.push([one]);
  }
  return runs;
}

/** How much of what leaves a line visibly goes to its lesser side, as a part of the whole. */
function lesserSide(
  levels: Levels,
  from: number,
  to: number,
  line: (bin: number) => number,
): number {
  const { below, above } = sidesOfLine(levels, from, to, line);
  return Math.min(below, above) / Math.max(below + above, levels.visible);
}
