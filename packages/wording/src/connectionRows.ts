import {
  formatQuantity,
  isDetermined,
  type MistakeEffect,
  type WrongConnection,
} from '@truesweep/core';
import { appearanceLabels, mistakeLabel, partOverWords, planWords } from './planWords.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Right and wrong connections as rows of a table, its head first: readings at both stops, how it looks, which part is over its rating.
 *
 * @example
 * import { wrongConnections } from '@truesweep/core';
 * const bench = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * connectionRows(wrongConnections(bench))[1].slice(0, 2) // => ['right', '0\u00a0V']
 */
export function connectionRows(
  connections: readonly WrongConnection[],
): readonly (readonly string[])[] {
  const { connection, closed, open, looks, over } = planWords;
  return whole(connections, 'connections', () => [
    [connection, closed, open, looks, over],
    ...connections.map(({ mistake, planned }) => [
      mistakeLabel(mistake),
      reading(planned.closed),
      reading(planned.open),
      appearanceLabels[planned.appearance],
      overWords(planned),
    ]),
  ]);
}

function overWords({ ratings }: MistakeEffect): string {
  const over = Object.entries(ratings)
    .filter(([, { outcome }]) => outcome === 'over' || outcome === 'over-continuous')
    .map(([part]) => say`${partOverWords[part as keyof typeof partOverWords]}`);
  return over.length > 0 ? over.join(', ') : '–';
}

function reading(value: MistakeEffect['closed']): string {
  return isDetermined(value) ? formatQuantity(value, 'V', { trim: true }) : '–';
}
