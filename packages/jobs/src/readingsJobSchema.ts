import * as v from 'valibot';
import { fieldGroup } from './fieldGroup.js';
import { listOf, notAVersion, oneOf, recording, textField } from './jobSchema.js';
import { jsonSchemaOf } from './jsonSchemaOf.js';
import { measureField, portField } from './measureField.js';
import {
  anyOhmsField,
  secondsField,
  signedVoltsField,
  someOhmsField,
  someVoltsField,
  toleranceField,
  uncertainOhmsField,
  uncertainVoltsField,
} from './quantityField.js';
import { refusal, shown } from './refusal.js';

const maybe = v.exactOptional;

const celsius = measureField('temperature', -273, 2000);
const kelvins = measureField('temperature-difference', 0, 100);
const pascals = measureField('pressure', -1e9, 1e9);
const uncertainPascals = measureField('pressure', 0, 1e6);
const altitude = measureField('length', -500, 6000);

/** A plain number between two bounds. */
const numberFrom = (low: number, high: number) =>
  v.pipe(
    v.custom<number>(
      (value) => typeof value === 'number' && value >= low && value <= high,
      ({ input }) =>
        refusal('out-of-range', `is ${shown(input)}; it must be a number from ${low} to ${high}.`),
    ),
    jsonSchemaOf({ type: 'number', minimum: low, maximum: high }),
  );

const yesOrNo = v.pipe(
  v.custom<boolean>(
    (value) => typeof value === 'boolean',
    ({ input }) => refusal('not-boolean', `is ${shown(input)}; it must be true or false.`),
  ),
  jsonSchemaOf({ type: 'boolean' }),
);

/** A group by its field `kind`, so that a refusal has the path of the field that is wrong. */
const byKind = <Schema extends v.GenericSchema>(
  what: string,
  kinds: Readonly<Record<string, Schema>>,
) => {
  const names = Object.keys(kinds);
  const unknownKind = fieldGroup(what, { kind: oneOf(...names) });
  // Without a value all of them: so the published definition knows them too.
  const any = v.union(Object.values(kinds), ({ input }) =>
    refusal('not-a-group', `is ${shown(input)}; it must be ${what}: { "kind": … }.`),
  );
  return v.lazy<Schema>((input) => {
    if (input === undefined) return any as unknown as Schema;
    const kind = (input as { readonly kind?: unknown } | null)?.kind;
    const known = typeof kind === 'string' && names.includes(kind) ? kinds[kind] : undefined;
    return known ?? (unknownKind as unknown as Schema);
  });
};

const row = fieldGroup('a row of the table', {
  temperature: celsius,
  ohms: someOhmsField,
  low: maybe(someOhmsField),
  high: maybe(someOhmsField),
});

const table = fieldGroup("a thermistor's table", {
  kind: oneOf<'table'>('table'),
  rows: listOf(row, '{ "temperature": …, "ohms": … }'),
});
const steinhartHart = fieldGroup("Steinhart and Hart's law", {
  kind: oneOf<'steinhart-hart'>('steinhart-hart'),
  a: numberFrom(-1, 1),
  b: numberFrom(-1, 1),
  c: numberFrom(-1, 1),
  lowest: celsius,
  highest: celsius,
});
const oneB = fieldGroup('the law of one B', {
  kind: oneOf<'b'>('b'),
  b: numberFrom(10, 1e5),
  ohms: someOhmsField,
  from: celsius,
  to: celsius,
  lowest: maybe(celsius),
  highest: maybe(celsius),
});
type Law = typeof table | typeof steinhartHart | typeof oneB;

const barometer = fieldGroup('a barometer', {
  kind: oneOf<'barometer'>('barometer'),
  pressure: pascals,
  uncertainty: uncertainPascals,
});
const altimeter = fieldGroup('an altimeter setting', {
  kind: oneOf<'altimeter-setting'>('altimeter-setting'),
  setting: pascals,
  uncertainty: uncertainPascals,
  altitude,
});
const height = fieldGroup('an altitude', { kind: oneOf<'altitude'>('altitude'), altitude });
const air = byKind<typeof barometer | typeof altimeter | typeof height>('the air', {
  barometer,
  'altimeter-setting': altimeter,
  altitude: height,
});

const common = { version: v.literal(3, notAVersion), title: textField };
const notes = maybe(textField);

export const thermistorJobSchema = fieldGroup('a job', {
  ...common,
  sensor: fieldGroup('a thermistor', {
    kind: oneOf<'thermistor'>('thermistor'),
    name: textField,
    law: byKind<Law>("a thermistor's law", { table, 'steinhart-hart': steinhartHart, b: oneB }),
    tolerances: maybe(
      fieldGroup('the tolerances of a thermistor', {
        ohms: maybe(toleranceField),
        b: maybe(toleranceField),
        kelvins: maybe(kelvins),
        at: maybe(celsius),
      }),
    ),
    dissipation: maybe(numberFrom(1e-9, 1e3)),
    timeConstant: maybe(secondsField),
  }),
  readOn: maybe(
    fieldGroup('what the voltages were read on', {
      supply: someVoltsField,
      pullUp: someOhmsField,
      meter: maybe(someOhmsField),
      supplyUncertainty: uncertainVoltsField,
      pullUpUncertainty: uncertainOhmsField,
      isProved: yesOrNo,
    }),
  ),
  air: maybe(air),
  readings: maybe(
    listOf(
      fieldGroup('a reading of a thermistor', {
        bath: maybe(oneOf<'thermometer' | 'ice' | 'boiling'>('thermometer', 'ice', 'boiling')),
        temperature: maybe(celsius),
        temperatureUncertainty: maybe(kelvins),
        unsettled: maybe(kelvins),
        ohms: maybe(anyOhmsField),
        volts: maybe(signedVoltsField),
        uncertainty: numberFrom(0, 1e12),
      }),
      '{ "temperature": …, "ohms": … }',
    ),
  ),
  notes,
});

const line = fieldGroup('a straight line', {
  kind: oneOf<'line'>('line'),
  gain: numberFrom(-1, 1),
  offset: numberFrom(-10, 10),
  lowest: pascals,
  highest: pascals,
});
const ratios = fieldGroup('a table of ratios', {
  kind: oneOf<'table'>('table'),
  rows: listOf(
    fieldGroup('a row of the table', { pressure: pascals, ratio: numberFrom(-1, 2) }),
    '{ "pressure": …, "ratio": … }',
  ),
});

export const pressureJobSchema = fieldGroup('a job', {
  ...common,
  sensor: fieldGroup('a pressure sensor', {
    kind: oneOf<'pressure'>('pressure'),
    name: textField,
    reference: oneOf<'absolute' | 'gauge'>('absolute', 'gauge'),
    response: byKind<typeof line | typeof ratios>('the response', { line, table: ratios }),
    error: maybe(pascals),
    errorFactors: maybe(
      listOf(
        fieldGroup('a factor on the error', { temperature: celsius, factor: numberFrom(1, 100) }),
        '{ "temperature": …, "factor": … }',
      ),
    ),
    supply: maybe(fieldGroup('a range of supplies', { low: someVoltsField, high: someVoltsField })),
  }),
  air,
  temperature: maybe(celsius),
  readings: maybe(
    listOf(
      fieldGroup('a reading of a pressure sensor', {
        port: portField,
        portUncertainty: maybe(uncertainPascals),
        volts: signedVoltsField,
        supply: someVoltsField,
        uncertainty: uncertainVoltsField,
      }),
      '{ "port": "open", "volts": … }',
    ),
  ),
  recordings: maybe(
    listOf(
      fieldGroup('a recorded pump-down', {
        ...recording.pipe[2].entries,
        ports: listOf(portField, '"open", "10 inHg vacuum"'),
        portUncertainty: maybe(uncertainPascals),
        supply: maybe(someVoltsField),
        uncertainty: uncertainVoltsField,
      }),
      '{ "file": …, "ports": … }',
    ),
  ),
  notes,
});

/** A number in the unit that the sensor is read in, or a text in volts or ohms; which of them is right the sensor says. */
const stateValueField = v.union(
  [numberFrom(-100, 1e18), signedVoltsField, anyOhmsField],
  ({ input }) =>
    refusal(
      'not-a-quantity',
      `is ${shown(input)}; it must be a number in V or Ω, a voltage, a resistance, or "open".`,
    ),
);

const limits = fieldGroup('a window', {
  low: maybe(numberFrom(-1e12, 1e12)),
  high: maybe(numberFrom(-1e12, 1e12)),
});

export const twoStateJobSchema = fieldGroup('a job', {
  ...common,
  sensor: fieldGroup('a sensor of two states', {
    kind: oneOf<'two-state'>('two-state'),
    name: textField,
    reads: oneOf<'volts' | 'ratio' | 'ohms'>('volts', 'ratio', 'ohms'),
    rest: limits,
    operated: limits,
    latched: yesOrNo,
    bothWays: yesOrNo,
    changesBetween: maybe(
      fieldGroup('a range of angles', { low: numberFrom(0, 180), high: numberFrom(0, 180) }),
    ),
  }),
  readings: maybe(
    listOf(
      fieldGroup('a reading of two states', {
        state: oneOf<'rest' | 'operated' | 'operated-other-way' | 'back-at-rest' | 'key-cycled'>(
          'rest',
          'operated',
          'operated-other-way',
          'back-at-rest',
          'key-cycled',
        ),
        value: stateValueField,
        uncertainty: numberFrom(0, 1e9),
        supply: maybe(someVoltsField),
        supplyUncertainty: maybe(uncertainVoltsField),
        leads: maybe(uncertainOhmsField),
        changedAt: maybe(numberFrom(0, 180)),
        angleUncertainty: maybe(numberFrom(0, 180)),
      }),
      '{ "state": "rest", "value": … }',
    ),
  ),
  recordings: maybe(
    listOf(
      fieldGroup('a recording of a switch', {
        ...recording.pipe[2].entries,
        low: signedVoltsField,
        high: signedVoltsField,
      }),
      '{ "file": …, "low": …, "high": … }',
    ),
  ),
  notes,
});

const plainWire = (kind: 'copper' | 'aluminium') =>
  fieldGroup('a conductor', { kind: oneOf<'copper' | 'aluminium'>(kind) });
const byConductivity = fieldGroup('a conductor', {
  kind: oneOf<'conductivity'>('conductivity'),
  conductivity: numberFrom(0.1, 1.1),
});
const byConstant = fieldGroup('a conductor', {
  kind: oneOf<'constant'>('constant'),
  k: numberFrom(100, 10_000),
});

export const windingJobSchema = fieldGroup('a job', {
  ...common,
  sensor: fieldGroup('a winding', {
    kind: oneOf<'winding'>('winding'),
    name: textField,
    low: maybe(someOhmsField),
    high: maybe(someOhmsField),
    at: maybe(celsius),
    conductor: maybe(
      byKind<ReturnType<typeof plainWire> | typeof byConductivity | typeof byConstant>(
        'a conductor',
        {
          copper: plainWire('copper'),
          aluminium: plainWire('aluminium'),
          conductivity: byConductivity,
          constant: byConstant,
        },
      ),
    ),
  }),
  readings: maybe(
    listOf(
      fieldGroup('a reading of a winding', {
        ohms: anyOhmsField,
        uncertainty: uncertainOhmsField,
        leads: maybe(uncertainOhmsField),
        temperature: celsius,
        temperatureUncertainty: kelvins,
      }),
      '{ "ohms": …, "temperature": … }',
    ),
  ),
  notes,
});

/** The schema of each kind of job of single readings. */
export const readingsSchemas = {
  thermistor: thermistorJobSchema,
  pressure: pressureJobSchema,
  'two-state': twoStateJobSchema,
  winding: windingJobSchema,
} as const;
