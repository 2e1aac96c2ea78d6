import {
  type Criteria,
  criteriaBounds,
  type NumberCriterion,
  type Sampling,
  type Stretch,
} from '@truesweep/core';
import type { DecimalSign, Delimiter, SignalUnit, TimeUnit } from '@truesweep/recordings';
import * as v from 'valibot';
import { contradictionOf } from './contradictionOf.js';
import { fieldGroup } from './fieldGroup.js';
import { jsonSchemaOf } from './jsonSchemaOf.js';
import {
  ampsField,
  criterionField,
  fractionField,
  fullScaleField,
  hertzField,
  momentField,
  ohmsField,
  secondsField,
  signedVoltsField,
  someOhmsField,
  someVoltsField,
  sourceVoltsField,
  toleranceField,
} from './quantityField.js';
import { refusal, shown } from './refusal.js';

const maybe = v.exactOptional;

export const textField = v.pipe(
  v.custom<string>(
    (value) => typeof value === 'string' && value.trim() !== '',
    ({ input }) => refusal('not-a-text', `is ${shown(input)}; it must be a text that isn't empty.`),
  ),
  jsonSchemaOf({ type: 'string', pattern: '\\S' }),
);

export const oneOf = <Text extends string>(...texts: readonly Text[]) =>
  v.picklist(texts, ({ input }) => {
    const list = texts.map((text) => JSON.stringify(text)).join(', ');
    return refusal('not-one-of', `is ${shown(input)}; it must be one of ${list}.`);
  });

const countFrom = (low: number) =>
  v.pipe(
    v.custom<number>(
      (value) => Number.isInteger(value) && (value as number) >= low,
      ({ input }) =>
        refusal('not-a-count', `is ${shown(input)}; it must be a whole number, ${low} or more.`),
    ),
    jsonSchemaOf({ type: 'integer', minimum: low }),
  );

const factorField = v.pipe(
  v.custom<number>(
    (value) => typeof value === 'number' && value > 0 && value <= 1e6,
    ({ input }) =>
      refusal('out-of-range', `is ${shown(input)}; it must be a number above 0, at most 1e6.`),
  ),
  jsonSchemaOf({ type: 'number', exclusiveMinimum: 0, maximum: 1e6 }),
);

const columnField = v.pipe(
  v.custom<number | string>(
    (value) => typeof value === 'string' || (Number.isInteger(value) && (value as number) >= 0),
    ({ input }) =>
      refusal(
        'not-a-column',
        `is ${shown(input)}; it must be a heading, or the column's number counted from 0.`,
      ),
  ),
  jsonSchemaOf({ anyOf: [{ type: 'string' }, { type: 'integer', minimum: 0 }] }),
);

const sensorFields = {
  name: textField,
  track: someOhmsField,
  bottomResidual: maybe(ohmsField),
  topResidual: maybe(ohmsField),
  contact: maybe(ohmsField),
  closedPosition: maybe(fractionField),
  openPosition: maybe(fractionField),
  tolerances: maybe(
    fieldGroup('the tolerances of a sensor', {
      track: maybe(toleranceField),
      closedPosition: maybe(toleranceField),
      openPosition: maybe(toleranceField),
    }),
  ),
};

interface Places {
  readonly closedPosition?: number;
  readonly openPosition?: number;
}

const hasTravel = <Sensor extends Places>() =>
  v.check<Sensor, string>(
    ({ closedPosition = 0, openPosition = 1 }) => closedPosition !== openPosition,
    refusal(
      'no-travel',
      'has its closed and its open position at one place of the track; they must differ.',
    ),
  );

const potentiometer = 'potentiometer' as const;

const sensor = v.pipe(
  fieldGroup('a sensor', { kind: oneOf<typeof potentiometer>(potentiometer), ...sensorFields }),
  hasTravel(),
);

/** A sensor of the versions 1 and 2, which knew potentiometers only. */
const sensorOfVersion2 = v.pipe(
  fieldGroup('a sensor', sensorFields),
  hasTravel(),
  v.transform((fields) => ({ kind: potentiometer, ...fields })),
);

const hookUp = v.pipe(
  fieldGroup('a hook-up', {
    source: fieldGroup('a source', {
      volts: sourceVoltsField,
      ohms: maybe(ohmsField),
      currentLimit: maybe(ampsField),
    }),
    limiter: ohmsField,
    leads: maybe(
      fieldGroup('the leads', {
        supply: maybe(ohmsField),
        ground: maybe(ohmsField),
        signal: maybe(ohmsField),
      }),
    ),
    pullDown: maybe(ohmsField),
    pullUp: maybe(fieldGroup('a pull-up', { ohms: ohmsField, volts: sourceVoltsField })),
    tolerances: maybe(
      fieldGroup('the tolerances of a hook-up', {
        source: maybe(toleranceField),
        limiter: maybe(toleranceField),
        pullDown: maybe(toleranceField),
      }),
    ),
  }),
  v.check(
    ({ pullDown, tolerances }) => pullDown !== undefined || tolerances?.pullDown === undefined,
    refusal('no-pull-down', 'gives a tolerance of a pull-down but no pull-down; add “pullDown”.'),
  ),
);

const instrument = fieldGroup('an instrument', {
  name: textField,
  inputResistance: someOhmsField,
  resolution: maybe(someVoltsField),
  range: maybe(
    v.pipe(
      fieldGroup("an instrument's range", { low: signedVoltsField, high: signedVoltsField }),
      v.check(
        ({ low, high }) => low < high,
        refusal('no-range', 'has its high end at or below its low end; high must be above low.'),
      ),
    ),
  ),
  uncertainty: maybe(someVoltsField),
  coupling: maybe(oneOf<'dc' | 'ac'>('dc', 'ac')),
  sampling: maybe(oneOf<Sampling>('picked', 'averaged', 'peak-kept', 'interpolated')),
  sampledEvery: maybe(secondsField),
});

/** A limit that bears no unit, between its bounds. */
const plainCriterion = (name: NumberCriterion, isCount: boolean) => {
  const [low, high] = criteriaBounds[name];
  return v.pipe(
    v.custom<number>(
      (value) =>
        typeof value === 'number' &&
        (!isCount || Number.isInteger(value)) &&
        value >= low &&
        value <= high,
      ({ input }) =>
        refusal(
          isCount ? 'not-a-count' : 'out-of-range',
          `is ${shown(input)}; it must be a ${isCount ? 'whole ' : ''}number from ${low} to ${high}.`,
        ),
    ),
    jsonSchemaOf({ type: isCount ? 'integer' : 'number', minimum: low, maximum: high }),
  );
};

const fraction = (name: NumberCriterion) => maybe(criterionField(name, '%'));
const factor = (name: NumberCriterion) => maybe(plainCriterion(name, false));
const count = (name: NumberCriterion) => maybe(plainCriterion(name, true));

const criteria = v.pipe(
  fieldGroup('the criteria', {
    falseDepartures: fraction('falseDepartures'),
    visibleSteps: factor('visibleSteps'),
    visibleSpan: fraction('visibleSpan'),
    visibleRipple: factor('visibleRipple'),
    dropout: maybe(criterionField('dropout', 's')),
    samplesInDropout: count('samplesInDropout'),
    looks: count('looks'),
    coarsestVisible: fraction('coarsestVisible'),
    deepDeparture: fraction('deepDeparture'),
    sameTravel: fraction('sameTravel'),
    supplyStray: fraction('supplyStray'),
    endAcceptance: maybe(oneOf<Criteria['endAcceptance']>('simple', 'guarded')),
    endMarginal: fraction('endMarginal'),
    closedNormal: fraction('closedNormal'),
    closedMarginal: fraction('closedMarginal'),
    returns: count('returns'),
  }),
  v.check(
    (named) => contradictionOf(named) === undefined,
    ({ input }) => contradictionOf(input) ?? '',
  ),
);

const hashField = v.pipe(
  v.custom<string>(
    (value) => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value),
    ({ input }) =>
      refusal(
        'not-a-hash',
        `is ${shown(input)}; it must be the SHA-256 of the file: 64 hexadecimal digits in lower case.`,
      ),
  ),
  jsonSchemaOf({ type: 'string', pattern: '^[0-9a-f]{64}$' }),
);

const textReading = {
  delimiter: maybe(oneOf<Delimiter>(',', ';', '\t', '|', ' ')),
  decimal: maybe(oneOf<DecimalSign>('.', ',')),
  timeColumn: maybe(columnField),
  signalColumn: maybe(columnField),
  supplyColumn: maybe(columnField),
  timeUnit: maybe(oneOf<TimeUnit>('s', 'ms', 'µs', 'clock')),
  signalUnit: maybe(oneOf<SignalUnit>('V', 'mV', 'counts', '%')),
};

const identity = {
  file: textField,
  bytes: maybe(countFrom(1)),
  sha256: maybe(hashField),
};

const stretch = v.pipe(
  fieldGroup('a stretch of a recording', {
    kind: oneOf<Stretch['kind']>('sweep', 'rest', 'harness-flexed', 'housing-tapped', 'warmed'),
    start: momentField,
    end: momentField,
  }),
  v.check(
    ({ start, end }) => start < end,
    refusal('no-stretch', 'ends at or before its start; end must be after start.'),
  ),
);

export const listOf = <Item extends v.GenericSchema>(item: Item, example: string) =>
  v.array(item, ({ input }) =>
    refusal('not-a-list', `is ${shown(input)}; it must be a list: [${example}].`),
  );

const aFile = '{ "file": … }';

export const recording = fieldGroup('a recording', {
  ...identity,
  stretches: maybe(listOf(stretch, '{ "kind": "harness-flexed", "start": …, "end": … }')),
  text: maybe(
    fieldGroup('how a text is read', {
      ...textReading,
      secondColumn: maybe(columnField),
      positionColumn: maybe(columnField),
      voltsPerUnit: maybe(someVoltsField),
      sampleRate: maybe(hertzField),
    }),
  ),
  sound: maybe(
    fieldGroup("what a sound recording doesn't tell", {
      fullScale: fullScaleField,
      attenuation: factorField,
      microphoneBias: oneOf('off'),
      signalChannel: maybe(countFrom(0)),
      supplyChannel: maybe(countFrom(0)),
      secondChannel: maybe(countFrom(0)),
    }),
  ),
});

/** A recording of version 1, in which how a text is read stood beside the file's name. */
const recordingOfVersion1 = v.pipe(
  fieldGroup('a recording', { ...identity, ...textReading }),
  v.transform(({ file, bytes, sha256, ...text }) => ({
    file,
    ...(bytes !== undefined && { bytes }),
    ...(sha256 !== undefined && { sha256 }),
    ...(Object.keys(text).length > 0 && { text }),
  })),
);

export const notAVersion = ({ input }: { readonly input: unknown }) =>
  refusal('not-a-version', `is ${shown(input)}; this program reads the versions 1 to 3.`);

const fieldsWith = <Sensor extends v.GenericSchema>(ofSensor: Sensor) => ({
  title: textField,
  sensor: ofSensor,
  hookUp,
  instrument,
  criteria: maybe(criteria),
  notes: maybe(textField),
});

/** A job of sweeps as it stands in JSON, read into SI units. */
export const jobSchema = fieldGroup('a job', {
  version: v.literal(3, notAVersion),
  ...fieldsWith(sensor),
  recordings: maybe(listOf(recording, aFile)),
});

/** A job of version 2, read into one of version 3: its sensor is a potentiometer. */
export const jobSchemaOfVersion2 = v.pipe(
  fieldGroup('a job', {
    version: v.literal(2, notAVersion),
    ...fieldsWith(sensorOfVersion2),
    recordings: maybe(listOf(recording, aFile)),
  }),
  v.transform((job) => ({ ...job, version: 3 as const })),
);

/** A job of version 1, read into one of version 3. */
export const jobSchemaOfVersion1 = v.pipe(
  fieldGroup('a job', {
    version: v.literal(1, notAVersion),
    ...fieldsWith(sensorOfVersion2),
    recordings: maybe(listOf(recordingOfVersion1, aFile)),
  }),
  v.transform((job) => ({ ...job, version: 3 as const })),
);
