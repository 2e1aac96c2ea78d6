import { type CaptureQuality, formatQuantity } from '@truesweep/core';
import { number, say } from './say.js';
import { whole } from './whole.js';

/**
 * What was assumed of a recording's stamps, where they are not the times of the samples as they stand.
 *
 * @returns Nothing where the stamps were taken as they stand.
 *
 * @example
 * const stamps = { clock: 'stamped', moved: 0, pairs: 0, strayed: 1, restarts: 0 } as const;
 * stampsSentence({ stamps, disordered: 1, interval: 0.001 }) // => 'Not as stamped: 1 stamp that strayed alone was put between its neighbours.'
 */
export function stampsSentence(
  quality: Pick<CaptureQuality, 'stamps' | 'disordered' | 'interval'>,
): string | undefined {
  const said = whole(quality, 'quality', () => {
    const { stamps, disordered, interval } = quality;
    const { clock, moved, pairs, strayed, restarts } = stamps;
    for (const [name, value] of Object.entries({ moved, pairs, strayed, restarts, disordered }))
      number(value, name);
    const late = disordered - strayed - restarts;
    const upTo = formatQuantity(moved, 's', { digits: 2, trim: true });
    const each = formatQuantity(interval, 's', { digits: 3, trim: true });
    const parts = [
      clock === 'even' &&
        say`the samples were taken to lie evenly, ${each} apart, up to ${upTo} from their stamps`,
      clock === 'spread' &&
        say`rows that share a stamp were spread evenly up to the next one, by up to ${upTo}`,
      pairs > 0 &&
        say`${count(pairs, 'pair of rows was', 'pairs of rows were')} taken for the lowest and the highest reading of an interval`,
      strayed > 0 &&
        say`${count(strayed, 'stamp that strayed alone was put between its neighbours', 'stamps that strayed alone were put between their neighbours')}`,
      restarts > 0 &&
        say`the clock began anew ${restarts === 1 ? 'once' : say`${restarts} times`} and was taken to go on`,
      late > 0 &&
        say`${count(late, 'row', 'rows')} written late ${late === 1 ? 'was' : 'were'} put in order`,
    ].filter((part) => part !== false);
    return parts.length > 0 ? say`Not as stamped: ${parts.join('; ')}.` : '';
  });
  return said || undefined;
}

function count(number: number, one: string, more: string): string {
  return say`${number} ${number === 1 ? one : more}`;
}
