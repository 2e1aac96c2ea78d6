import {
  InputError,
  type InputErrorCode,
  type MeasureKind,
  parseMeasure,
  parsePressure,
} from '@truesweep/core';
import * as v from 'valibot';
import { attempt } from './attempt.js';
import { jsonSchemaOf } from './jsonSchemaOf.js';
import { refusal, shown } from './refusal.js';

const units: Readonly<Record<MeasureKind, string>> = {
  temperature: '°C',
  'temperature-difference': 'K',
  pressure: 'Pa',
  length: 'm',
};

/** A number in °C, K, Pa or m, or a text with its unit, between two bounds. */
export function measureField(kind: MeasureKind, low: number, high: number) {
  const unit = units[kind];
  return v.pipe(
    v.unknown(),
    v.rawTransform<unknown, number>(({ dataset, addIssue, NEVER }) => {
      const refuse = (code: InputErrorCode, predicate: string) => {
        addIssue({ message: refusal(code, predicate) });
        return NEVER;
      };
      const given = dataset.value;
      const value = typeof given === 'string' ? attempt(() => parseMeasure(given, kind)) : given;
      if (value instanceof InputError) return refuse(value.code, `can't be read: ${value.message}`);
      if (typeof value !== 'number') {
        const right = `a number in ${unit} or a text with its unit`;
        return refuse('not-a-quantity', `is ${shown(given)}; it must be ${right}.`);
      }
      if (value >= low && value <= high) return value;
      return refuse(
        'out-of-range',
        `is ${shown(given)}; it must be from ${low} to ${high} ${unit}.`,
      );
    }),
    jsonSchemaOf({
      description: `A number in ${unit}, or a text with its unit; from ${low} to ${high} ${unit}.`,
      anyOf: [
        { type: 'number', minimum: low, maximum: high },
        { type: 'string', pattern: '\\d' },
      ],
    }),
  );
}

/** What stands at the port of a pressure sensor: `open`, a text such as `20 inHg vacuum`, or a pressure that was read. */
export const portField = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, 'open' | { pascals: number; reference: 'absolute' | 'gauge' }>(
    ({ dataset, addIssue, NEVER }) => {
      const given = dataset.value;
      if (given === 'open') return given;
      const read = attempt(() => {
        if (typeof given === 'string') return parsePressure(given);
        const { pascals, reference } = (given ?? {}) as {
          readonly pascals?: unknown;
          readonly reference?: 'absolute';
        };
        if (typeof pascals === 'number' && Math.abs(pascals) <= 1e9) {
          return parsePressure(`${pascals} Pa ${String(reference)}`);
        }
        throw new InputError(
          'not-a-quantity',
          'port',
          'It must be “open”, or a pressure such as "20 inHg vacuum".',
        );
      });
      if (!(read instanceof InputError)) return read;
      addIssue({ message: refusal(read.code, `is ${shown(given)}: ${read.message}`) });
      return NEVER;
    },
  ),
  jsonSchemaOf({
    description: '“open”, or a pressure with its unit and “absolute”, “gauge” or “vacuum”.',
    anyOf: [
      { type: 'string' },
      {
        type: 'object',
        properties: {
          pascals: { type: 'number', minimum: -1e9, maximum: 1e9 },
          reference: { enum: ['absolute', 'gauge'] },
        },
        required: ['pascals', 'reference'],
        additionalProperties: false,
      },
    ],
  }),
);
