import { type CaptureQuality, formatQuantity } from '@truesweep/core';

/**
 * What was assumed of a recording's stamps, where they are not the times of the samples as they stand.
 *
 * @returns Nothing where the stamps were taken as they stand.
 *
 * @example
 * const stamps = { clock: 'stamped', moved: 0, pairs: 0, strayed: 1, restarts: 0 } as const;
 * stampsSentence({ stamps, disordered: 1, interval: 0.001 }) // => 'Not as stamped: 1 stamp that strayed alone was put between its neighbours.'
 */
export function stampsSentence({
  stamps: { clock, moved, pairs, strayed, restarts },
  disordered,
  interval,
}: Pick<CaptureQuality, 'stamps' | 'disordered' | 'interval'>): string | undefined {
  const late = disordered - strayed - restarts;
  const upTo = formatQuantity(moved, 's', { digits: 2, trim: true });
  const each = formatQuantity(interval, 's', { digits: 3, trim: true });
  const parts = [
    clock === 'even' &&
      `the samples were taken to lie evenly, ${each} apart, up to ${upTo} from their stamps`,
    clock === 'spread' &&
      `rows that share a stamp were spread evenly up to the next one, by up to ${upTo}`,
    pairs > 0 &&
      `${count(pairs, 'pair of rows was', 'pairs of rows were')} taken for the lowest and the highest reading of an interval`,
    strayed > 0 &&
      `${count(strayed, 'stamp that strayed alone was put between its neighbours', 'stamps that strayed alone were put between their neighbours')}`,
    restarts > 0 &&
      `the clock began anew ${restarts === 1 ? 'once' : `${restarts} times`} and was taken to go on`,
    late > 0 &&
      `${count(late, 'row', 'rows')} written late ${late === 1 ? 'was' : 'were'} put in order`,
  ].filter((part) => part !== false);
  return parts.length > 0 ? `Not as stamped: ${parts.join('; ')}.` : undefined;
}

function count(number: number, one: string, more: string): string {
  return `${number} ${number === 1 ? one : more}`;
}
