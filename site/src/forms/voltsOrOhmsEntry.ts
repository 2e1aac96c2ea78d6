import { InputError, parseQuantity } from '@truesweep/core';
import { outOfBoundsSentence, stateWords } from '@truesweep/wording';
import type { OwnEntry } from './entry.js';

/** A reading that says by its unit what it is. */
export interface VoltsOrOhms {
  readonly unit: 'V' | 'Ω';
  /** V or Ω; `Infinity` for the over-range of an ohmmeter. */
  readonly value: number;
}

const most = { V: 60, Ω: 1e9 } as const;
const bounds = { V: ['0 V', '60 V'], Ω: ['0 Ω', '1 GΩ'] } as const;

/** Volts or ohms, told by the unit; an ohmmeter's over-range is endless ohms. */
export function voltsOrOhmsEntry(
  initial: string,
): OwnEntry<VoltsOrOhms> & { readonly optional: true } {
  return {
    unit: 'own',
    initial,
    optional: true,
    bounds: bounds.V,
    read: (text, name) => {
      const given = text.trim();
      if (/^(ol|open)$/i.test(given)) return { unit: 'Ω', value: Number.POSITIVE_INFINITY };
      const unit = /v(olts?)?$/i.test(given) ? 'V' : /(Ω|Ω|ohms?)$/i.test(given) ? 'Ω' : undefined;
      const value = unit && parseQuantity(given, unit, name);
      if (unit === undefined || value === undefined)
        throw new InputError('no-unit', name, stateWords.notReading(given));
      if (value >= 0 && value <= most[unit]) return { unit, value };
      const [low, high] = bounds[unit];
      throw new InputError('out-of-range', name, outOfBoundsSentence(given, low, high));
    },
  };
}
