import { InputError, parseQuantity } from '@truesweep/core';
import { coilWords, outOfBoundsSentence } from '@truesweep/wording';
import type { OwnEntry } from './entry.js';

const [least, most] = [1e-6, 100];
const bounds = ['1 µH', '100 H'] as const;

/** An inductance with its unit, H. */
export function inductanceEntry(initial: string): OwnEntry<number> & { readonly optional: true } {
  return {
    unit: 'own',
    initial,
    optional: true,
    bounds,
    read: (text, name) => {
      const given = text.trim();
      const number = /^(.+?)H$/.exec(given)?.[1];
      const value = number === undefined ? Number.NaN : numberOf(number);
      if (Number.isNaN(value))
        throw new InputError('not-a-quantity', name, coilWords.notInductance(given));
      if (value >= least && value <= most) return value;
      throw new InputError('out-of-range', name, outOfBoundsSentence(given, ...bounds));
    },
  };
}

/** A number with a prefix, written before a unit; `NaN` for what is none. */
function numberOf(text: string): number {
  try {
    return parseQuantity(`${text}V`, 'V');
  } catch {
    return Number.NaN;
  }
}
