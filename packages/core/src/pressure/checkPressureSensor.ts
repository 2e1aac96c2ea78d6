import { InputError } from '../errors.js';
import { checkFields, checkKind, type FieldRules, listOf } from '../fields.js';
import { above0, between, finiteBetween } from '../guard.js';
import type { Pascals } from '../units.js';
import type { PressureSensor } from './pressureSensor.js';

const pascals = between(-1e9, 1e9, 'Pa');
const responses: Readonly<Record<PressureSensor['response']['kind'], FieldRules>> = {
  line: { gain: between(-1, 1), offset: between(-10, 10), lowest: pascals, highest: pascals },
  table: { rows: listOf({ pressure: pascals, ratio: between(-1, 2) }, 2, 1000) },
};
const rules: FieldRules = {
  reference: ['absolute', 'gauge'],
  response: (value, path) =>
    checkKind(value, path, responses as Readonly<Record<string, FieldRules>>),
  'error?': between(0, 1e9, 'Pa'),
  'errorFactors?': listOf(
    { temperature: between(-273, 2000, '°C'), factor: between(1, 100) },
    1,
    100,
  ),
  'supply?': { low: above0('V'), high: above0('V') },
};

/** Refuses what is no pressure sensor. */
export function checkPressureSensor(sensor: PressureSensor, path: string): void {
  checkFields(sensor, path, rules);
  const { response, errorFactors = [], supply, reference } = sensor;
  const here = `${path}.response`;
  if (response.kind === 'line') {
    if (Math.abs(response.gain) < 1e-12) {
      refuse(`${here}.gain`, 'is nearly nothing; the output must answer to the pressure');
    }
    if (!(response.lowest < response.highest)) {
      refuse(`${here}.highest`, 'must be above the lowest pressure');
    }
  } else {
    const { rows } = response;
    const sense = Math.sign(rows[1]!.ratio - rows[0]!.ratio);
    rows.slice(1).forEach((row, i) => {
      if (!(row.pressure > rows[i]!.pressure)) {
        refuse(`${here}.rows[${i + 1}].pressure`, 'must be above that of the row before');
      }
      if (sense === 0 || Math.sign(row.ratio - rows[i]!.ratio) !== sense) {
        refuse(`${here}.rows[${i + 1}].ratio`, 'must go on the way of the rows before');
      }
    });
  }
  const { lowest } = pressureRange(sensor);
  if (reference === 'absolute' && lowest < 0) {
    refuse(
      here,
      `begins at ${lowest} Pa; no absolute pressure is below 0, it may be meant as gauge`,
    );
  }
  errorFactors.slice(1).forEach((row, i) => {
    if (!(row.temperature > errorFactors[i]!.temperature)) {
      refuse(`${path}.errorFactors[${i + 1}].temperature`, 'must be above that of the row before');
    }
  });
  if (supply && supply.low > supply.high)
    refuse(`${path}.supply.high`, 'must not be below the low one');
}

/** The range of pressures that the response is known in. */
export function pressureRange({ response }: PressureSensor): {
  readonly lowest: Pascals;
  readonly highest: Pascals;
} {
  if (response.kind === 'line') return response;
  return { lowest: response.rows[0]!.pressure, highest: response.rows.at(-1)!.pressure };
}

/** Refuses a pressure beyond the sensor's range. */
export function withinRange(sensor: PressureSensor, pressure: Pascals, path: string): void {
  finiteBetween(pressure, -1e9, 1e9, path, 'Pa');
  const { lowest, highest } = pressureRange(sensor);
  if (pressure >= lowest && pressure <= highest) return;
  throw new InputError(
    'out-of-range',
    path,
    `${path} is ${pressure} Pa; the sensor's range is ${lowest} to ${highest} Pa ${sensor.reference}, and nothing is extrapolated.`,
  );
}

function refuse(path: string, wrong: string): never {
  throw new InputError('out-of-order', path, `${path} ${wrong}.`);
}
