import type { Levels } from '../movement/levels.js';

/** What leaves a line on either side, added up over the bins. */
export interface Sides {
  readonly below: number;
  readonly above: number;
}

/** How far the recording leaves a line from one bin to another: where it does so by half the visible departure, added up. */
export function sidesOfLine(
  { mean, visible }: Levels,
  from: number,
  to: number,
  line: (bin: number) => number,
): Sides {
  let [below, above] = [0, 0];
  for (let i = from; i <= to; i++) {
    const off = mean[i]! - line(i);
    if (off > visible / 2) above += off;
    else if (off < -visible / 2) below -= off;
  }
  return { below, above };
}
