import { InputError } from '@truesweep/core';
import {
  type MeasureKind,
  type MeasureUnit,
  parseMeasure,
  parsePressure,
  type ReadPressure,
} from '@truesweep/core/measures';
import { outOfBoundsSentence } from '@truesweep/wording';
import type { OwnEntry } from './entry.js';
import { measureText } from './measureText.js';

type Bounds = readonly [low: number, high: number];

/** What bounds are written in. */
const boundsIn = {
  temperature: '°C',
  'temperature-difference': 'K',
  pressure: 'kPa',
  length: 'm',
} as const satisfies Readonly<Record<MeasureKind, MeasureUnit>>;

/** A measure that must be entered with its unit: °C, K, Pa or m come out of whatever unit it was written in. */
export function measureEntry(kind: MeasureKind, bounds: Bounds, initial: string): OwnEntry<number> {
  const [low, high] = bounds.map((end) => measureText(end, boundsIn[kind])) as [string, string];
  return {
    unit: 'own',
    initial,
    bounds: [low, high],
    read: (text, name) => {
      const value = parseMeasure(text, kind, name);
      if (value >= bounds[0] && value <= bounds[1]) return value;
      throw new InputError('out-of-range', name, outOfBoundsSentence(text.trim(), low, high));
    },
  };
}

/** What a hand pump's gauge may show, Pa above the air around. */
const pumped: Bounds = [-1e5, 4e5];

/** What a pump's gauge shows: absolute, gauge or vacuum must be said with it. */
export function pumpEntry(initial: string): OwnEntry<ReadPressure> & { readonly optional: true } {
  const [low, high] = pumped.map((end) => `${measureText(end, 'kPa')} gauge`) as [string, string];
  return {
    unit: 'own',
    initial,
    optional: true,
    bounds: [low, high],
    read: (text, name) => {
      const read = parsePressure(text, undefined, name);
      if (read.pascals >= pumped[0] && read.pascals <= pumped[1]) return read;
      throw new InputError('out-of-range', name, outOfBoundsSentence(text.trim(), low, high));
    },
  };
}
