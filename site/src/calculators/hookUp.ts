import {
  type Circuit,
  InputError,
  parseQuantity,
  type QuantityUnit,
  type Tolerances,
} from '@truesweep/core';

/** One entry of the form: its label and the unit that it is read in. */
export interface Field {
  readonly label: string;
  readonly unit: QuantityUnit;
  readonly initial: string;
}

export const fields = {
  source: { label: 'Supply voltage', unit: 'V', initial: '5 V' },
  limiter: { label: 'Limiting resistor', unit: 'Ω', initial: '1 kΩ' },
  track: { label: 'Track resistance', unit: 'Ω', initial: '5 kΩ' },
  input: { label: "Instrument's input resistance", unit: 'Ω', initial: '10 MΩ' },
  closedPosition: { label: 'Wiper at the closed stop, of the track', unit: '%', initial: '10 %' },
  openPosition: { label: 'Wiper at the open stop, of the track', unit: '%', initial: '90 %' },
  sourceTolerance: { label: 'Supply voltage, ±', unit: '%', initial: '1 %' },
  limiterTolerance: { label: 'Limiting resistor, ±', unit: '%', initial: '5 %' },
  trackTolerance: { label: 'Track resistance, ±', unit: '%', initial: '20 %' },
  positionTolerance: { label: 'Wiper at the stops, ± of the track', unit: '%', initial: '2 %' },
} as const satisfies Record<string, Field>;

export type FieldName = keyof typeof fields;

/** What stands in the form, as it was typed. */
export type HookUpTexts = Readonly<Record<FieldName, string>>;

export const fieldNames = Object.keys(fields) as FieldName[];

export const initialTexts = Object.fromEntries(
  fieldNames.map((name) => [name, fields[name].initial]),
) as HookUpTexts;

export interface HookUp {
  readonly circuit: Circuit;
  readonly tolerances: Tolerances;
}

/** Reads the form into a circuit; throws the `InputError` of the first entry that can't be read. */
export function readHookUp(texts: HookUpTexts): HookUp {
  const read = (name: FieldName): number =>
    parseQuantity(texts[name], fields[name].unit, fields[name].label);
  const closedPosition = read('closedPosition');
  const openPosition = read('openPosition');
  const positionTolerance = read('positionTolerance');
  return {
    circuit: {
      source: { volts: read('source') },
      limiter: read('limiter'),
      sensor: { track: read('track'), closedPosition, openPosition },
      load: { pullDown: read('input') },
    },
    tolerances: {
      source: read('sourceTolerance'),
      limiter: read('limiterTolerance'),
      track: read('trackTolerance'),
      closedPosition: positionTolerance,
      openPosition: positionTolerance,
    },
  };
}

/** The sentence of a wrong entry; anything else is a mistake of the program and goes on. */
export function refusalOf(error: unknown): string {
  if (error instanceof InputError) return error.message;
  throw error;
}
