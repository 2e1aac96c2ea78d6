import { InputError } from '@truesweep/core';
import { outOfBoundsSentence, portWords } from '@truesweep/wording';
import type { OwnEntry } from './entry.js';

/** A plain number, with a point or a comma. */
export function numberEntry(
  [low, high]: readonly [low: number, high: number],
  initial: string,
): OwnEntry<number> {
  const bounds = [low, high].map((end) => `${end}`.replace('-', '−')) as [string, string];
  return {
    unit: 'own',
    initial,
    bounds,
    read: (text, name) => {
      const given = text.trim();
      const value = Number(given.replace('−', '-').replace(',', '.'));
      if (given === '' || !Number.isFinite(value))
        throw new InputError('not-a-quantity', name, portWords.notNumber(given));
      if (value >= low && value <= high) return value;
      throw new InputError('out-of-range', name, outOfBoundsSentence(given, ...bounds));
    },
  };
}
