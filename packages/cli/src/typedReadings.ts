import {
  InputError,
  type PressureReading,
  parseMeasure,
  parsePressure,
  parseQuantity,
  type QuantityUnit,
  type TwoStateAt,
} from '@truesweep/core';
import type { ReadingsJob } from '@truesweep/jobs';

/** What was told of the instruments, as it was typed. */
export interface TypedUncertainties {
  readonly meter: string;
  readonly thermometer?: string;
  readonly gauge?: string;
  readonly supply?: string;
  readonly leads?: string;
}

const states: readonly TwoStateAt[] = [
  'rest',
  'operated',
  'operated-other-way',
  'back-at-rest',
  'key-cycled',
];

/**
 * A job with the readings that were typed in place of its own: `ice=6.2k`, `21.5 °C=2.41 kΩ`, `open=4.03 V`, `10 inHg vacuum=2.53 V`,
 * `rest=0.98 V`, `68 °C=1012 Ω`.
 *
 * @throws InputError for what is no such reading, or where something that is needed with it was not told.
 */
export function withTypedReadings(
  job: ReadingsJob,
  typed: readonly string[],
  told: TypedUncertainties,
): ReadingsJob {
  const readings = typed.map((text) => {
    const [where = '', value = '', ...more] = text.split('=').map((part) => part.trim());
    if (where === '' || value === '' || more.length > 0) {
      throw new InputError(
        'not-a-reading',
        text,
        `“${text}” is no reading; write where it was read and what, such as ${examples[job.sensor.kind]}.`,
      );
    }
    return readingOf(job, where, value, text, told);
  });
  return { ...job, readings } as ReadingsJob;
}

const examples: Readonly<Record<ReadingsJob['sensor']['kind'], string>> = {
  thermistor: '"21.5 °C=2.41 kΩ" or "ice=6.24 kΩ"',
  pressure: '"open=4.03 V" or "10 inHg vacuum=2.53 V"',
  'two-state': '"rest=0.98 V"',
  winding: '"68 °C=1012 Ω"',
};

function readingOf(
  job: ReadingsJob,
  where: string,
  value: string,
  path: string,
  told: TypedUncertainties,
): object {
  switch (job.sensor.kind) {
    case 'thermistor': {
      const isVolts = /v(olts?)?$/i.test(value);
      const read = isVolts ? parseQuantity(value, 'V', path) : ohmsOf(value, path);
      const bath = /^(ice|boiling)$/i.exec(where)?.[1]?.toLowerCase();
      return {
        ...(bath ? { bath } : { temperature: parseMeasure(where, 'temperature', path) }),
        ...(told.thermometer !== undefined &&
          !bath && {
            temperatureUncertainty: parseMeasure(
              told.thermometer,
              'temperature-difference',
              '--thermometer',
            ),
          }),
        ...(isVolts ? { volts: read } : { ohms: read }),
        uncertainty: uncertaintyOf(read, isVolts ? 'V' : 'Ω', told.meter),
      };
    }
    case 'pressure': {
      const volts: PressureReading['volts'] = parseQuantity(value, 'V', path);
      const port = /^open$/i.test(where) ? 'open' : parsePressure(where, undefined, path);
      const gauge = told.gauge && parseMeasure(told.gauge, 'pressure', '--gauge');
      return {
        port,
        ...(gauge && port !== 'open' && { portUncertainty: gauge }),
        volts,
        supply: parseQuantity(needed(told.supply, '--supply'), 'V', '--supply'),
        uncertainty: uncertaintyOf(volts, 'V', told.meter),
      };
    }
    case 'two-state': {
      const state = states.find((one) => one === where.toLowerCase().replaceAll(' ', '-'));
      if (!state) {
        const wrong = `“${where}” is no state; there are ${states.join(', ')}.`;
        throw new InputError('unknown-choice', path, wrong);
      }
      const { reads } = job.sensor as { readonly reads: 'volts' | 'ratio' | 'ohms' };
      const isOhms = reads === 'ohms';
      const read = isOhms ? ohmsOf(value, path) : parseQuantity(value, 'V', path);
      return {
        state,
        value: read,
        uncertainty: uncertaintyOf(read, isOhms ? 'Ω' : 'V', told.meter),
        ...(reads === 'ratio' && {
          supply: parseQuantity(needed(told.supply, '--supply'), 'V', '--supply'),
        }),
        ...(isOhms && leadsOf(told)),
      };
    }
    case 'winding': {
      const ohms = ohmsOf(value, path);
      return {
        ohms,
        uncertainty: uncertaintyOf(ohms, 'Ω', told.meter),
        ...leadsOf(told),
        temperature: parseMeasure(where, 'temperature', path),
        temperatureUncertainty: parseMeasure(
          needed(told.thermometer, '--thermometer'),
          'temperature-difference',
          '--thermometer',
        ),
      };
    }
  }
}

/** A resistance, or an ohmmeter's over-range. */
const ohmsOf = (text: string, path: string): number =>
  /^(ol|open)$/i.test(text) ? Number.POSITIVE_INFINITY : parseQuantity(text, 'Ω', path);

const leadsOf = ({ leads }: TypedUncertainties) =>
  leads === undefined ? {} : { leads: parseQuantity(leads, 'Ω', '--leads') };

/** The meter's standard uncertainty: a part of the reading, or a quantity. */
function uncertaintyOf(read: number, unit: QuantityUnit, meter: string): number {
  if (!meter.includes('%')) return parseQuantity(meter, unit, '--meter');
  const part = parseQuantity(meter, '%', '--meter');
  return Number.isFinite(read) ? Math.abs(part * read) : 0;
}

function needed(text: string | undefined, option: string): string {
  if (text !== undefined) return text;
  throw new InputError('missing', option, `${option} is missing; these readings rest on it.`);
}
