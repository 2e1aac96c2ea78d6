import type { PressureSource } from '@truesweep/core/atmosphere';
import { type AirEntry, airWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { EntryGroup, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';

/** What the pressure of the air at the bench is known from. */
export const airEntries = {
  air: { unit: 'choice', initial: 'barometer', choices: airWords.kinds },
  barometer: { ...measureEntry('pressure', [3e4, 1.1e5], '1009 hPa'), optional: true },
  setting: { ...measureEntry('pressure', [8.5e4, 1.1e5], ''), optional: true },
  altitude: { ...measureEntry('length', [-500, 6000], ''), optional: true },
  airUncertainty: measureEntry('pressure', [0, 1e4], '1 hPa'),
} as const satisfies Readonly<Record<AirEntry, Entry>>;

export const airGroup: EntryGroup<AirEntry> = {
  title: airWords.title,
  names: ['air', 'barometer', 'setting', 'altitude', 'airUncertainty'],
};

type AirValues = Values<typeof airEntries>;

/** Refuses what is lacking for the way in which the air's pressure is known. */
export function checkedAir({
  air,
  barometer,
  setting,
  altitude,
}: AirValues): Refusals<typeof airEntries> {
  if (air === 'barometer')
    return barometer === undefined ? { barometer: airWords.needsBarometer } : {};
  return {
    ...(air === 'altimeter-setting' && setting === undefined && { setting: airWords.needsSetting }),
    ...(altitude === undefined && { altitude: airWords.needsAltitude }),
  };
}

/** Where the pressure of the air comes from, of what {@link checkedAir} let pass. */
export function airOf(values: AirValues): PressureSource {
  const { air, barometer = 0, setting = 0, altitude = 0, airUncertainty: uncertainty } = values;
  if (air === 'barometer') return { kind: air, pressure: barometer, uncertainty };
  if (air === 'altitude') return { kind: air, altitude };
  return { kind: air, setting, uncertainty, altitude };
}
