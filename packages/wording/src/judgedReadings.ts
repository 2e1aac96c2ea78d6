import {
  type CodedSensor,
  type CodeKind,
  codesOfReadings,
  formatMeasure,
  type PressureJudgement,
  type PressureReading,
  type PressureUncertainty,
  type ThermistorJudgement,
  type ThermistorReading,
  type ThermistorSource,
  type TwoStateJudgement,
  type TwoStateReading,
  type TwoStateSource,
  type Verdict,
  type WindingJudgement,
  type WindingReading,
  type WindingSource,
} from '@truesweep/core';
import type { Caution } from './cautions.js';
import { outcomeLabels } from './checks.js';
import { formatAlike } from './formatAlike.js';
import { pressureAdvice, pressureUnsaid } from './pressureReadingWords.js';
import { say } from './say.js';
import { thermistorAdvice, thermistorUnsaid } from './thermistorReadingWords.js';
import { troubleCodesSentence } from './troubleCodes.js';
import { twoStateAdvice, twoStateUnsaid } from './twoStateReadingWords.js';
import { whole } from './whole.js';
import { windingAdvice, windingUnsaid } from './windingReadingWords.js';

/** Single readings with what was made of them, by the kind of the sensor. */
export type ReadingsOfKind =
  | {
      /** What the sensor is. */
      readonly kind: 'thermistor';
      /** What they say. */
      readonly judgement: ThermistorJudgement;
      /** The readings, in the order of the checks' places. */
      readonly readings: readonly ThermistorReading[];
    }
  | {
      /** What the sensor is. */
      readonly kind: 'pressure';
      /** What they say. */
      readonly judgement: PressureJudgement;
      /** The readings, in the order of the checks' places. */
      readonly readings: readonly PressureReading[];
    }
  | {
      /** What the sensor is. */
      readonly kind: 'two-state';
      /** What they say. */
      readonly judgement: TwoStateJudgement;
      /** The readings, in the order of the checks' places. */
      readonly readings: readonly TwoStateReading[];
    }
  | {
      /** What the sensor is. */
      readonly kind: 'winding';
      /** What they say. */
      readonly judgement: WindingJudgement;
      /** The readings, in the order of the checks' places. */
      readonly readings: readonly WindingReading[];
    };

/** What any of them has. */
type AnyCheck = ReadingsOfKind['judgement']['checks'][number];
type AnySource = ThermistorSource | PressureUncertainty | TwoStateSource | WindingSource;

/**
 * What a kind of sensor is called.
 *
 * @example
 * sensorKindLabels.thermistor // => 'Temperature sensor'
 */
export const sensorKindLabels: Readonly<Record<ReadingsOfKind['kind'], string>> = {
  thermistor: 'Temperature sensor',
  pressure: 'Pressure sensor',
  'two-state': 'Sensor of two states',
  winding: 'Winding',
};

/**
 * The cautions that concern whoever reads such a sensor, in their usual order.
 *
 * @example
 * readingCautions('winding').includes('coil-kick') // => true
 */
export function readingCautions(kind: ReadingsOfKind['kind']): readonly Caution[] {
  return whole(kind, 'kind', () => cautionsOf[kind]);
}

const cautionsOf: Readonly<Record<ReadingsOfKind['kind'], readonly Caution[]>> = {
  thermistor: [
    'battery-and-fuel',
    'static',
    'unplugged',
    'hot-bath',
    'starting-points',
    'manual-first',
  ],
  pressure: ['battery-and-fuel', 'static', 'hand-pump', 'starting-points', 'manual-first'],
  'two-state': ['battery-and-fuel', 'static', 'unplugged', 'starting-points', 'manual-first'],
  winding: [
    'battery-and-fuel',
    'static',
    'unplugged',
    'low-ohm-coil',
    'coil-kick',
    'starting-points',
    'manual-first',
  ],
};

/**
 * What a verdict says of a sensor that was read here and there.
 *
 * @example
 * readingVerdictMeanings.pass // => 'Nothing that was read speaks against this sensor.'
 */
export const readingVerdictMeanings: Readonly<Record<Verdict, string>> = {
  pass: 'Nothing that was read speaks against this sensor.',
  marginal:
    'A reading lies just outside its limits. Read it again, with less uncertainty, before you decide.',
  fail: 'A reading lies outside its limits by more than three times its standard uncertainty. Do not put the sensor back as it is.',
  inconclusive: 'These readings cannot tell a good sensor from a bad one. It is not a pass.',
};

const checkNames: Readonly<Record<AnyCheck['check'], string>> = {
  resistance: 'Resistance',
  voltage: 'Voltage',
  'temperatures-apart': 'Coldest to hottest',
  'open-port': 'Output, open port',
  pumped: 'Output',
  gain: 'Change of output',
  supply: 'Supply',
  'pumped-far-enough': 'Pumped through',
  rest: 'At rest',
  operated: 'Operated',
  'operated-other-way': 'Operated the other way',
  'back-at-rest': 'Back at rest',
  'key-cycled': 'After the key was off and on',
  'change-angle': 'Angle at which it changes',
};

const sourceNames: Readonly<Record<AnySource, string>> = {
  meter: 'the meter',
  voltmeter: 'the voltmeter',
  thermometer: 'the thermometer',
  temperature: "the winding's temperature",
  supply: 'the supply',
  'pull-up': 'the pull-up',
  barometer: "the air's pressure",
  'pump-gauge': "the pump's gauge",
  leads: 'the test leads',
  angle: 'the angle',
};

/**
 * What to do next, a sentence for each advice, the first first.
 *
 * @example
 * const judgement = { verdict: 'inconclusive', checks: [], advice: ['read-farther-apart'], unsaid: [] } as const;
 * readingAdviceSentences({ kind: 'thermistor', judgement, readings: [] })[0].startsWith('Read it at two temperatures') // => true
 */
export function readingAdviceSentences(judged: ReadingsOfKind): readonly string[] {
  return whole(judged, 'judged', () => {
    switch (judged.kind) {
      case 'thermistor':
        return [...judged.judgement.advice].map((code) => thermistorAdvice[code]);
      case 'pressure':
        return [...judged.judgement.advice].map((code) => pressureAdvice[code]);
      case 'two-state':
        return [...judged.judgement.advice].map((code) => twoStateAdvice[code]);
      case 'winding':
        return [...judged.judgement.advice].map((code) => windingAdvice[code]);
    }
  });
}

/**
 * What these readings do not say of the sensor.
 *
 * @example
 * const judgement = { verdict: 'pass', checks: [], advice: [], unsaid: ['magnet'] } as const;
 * readingUnsaidSentences({ kind: 'winding', judgement, readings: [] }) // => ['Its magnet.']
 */
export function readingUnsaidSentences(judged: ReadingsOfKind): readonly string[] {
  return whole(judged, 'judged', () => {
    switch (judged.kind) {
      case 'thermistor':
        return [...judged.judgement.unsaid].map((code) => thermistorUnsaid[code]);
      case 'pressure':
        return [...judged.judgement.unsaid].map((code) => pressureUnsaid[code]);
      case 'two-state':
        return [...judged.judgement.unsaid].map((code) => twoStateUnsaid[code]);
      case 'winding':
        return [...judged.judgement.unsaid].map((code) => windingUnsaid[code]);
    }
  });
}

/**
 * Headings of single readings.
 *
 * @example
 * judgedReadingWords.unsaid // => 'What this does not say'
 */
export const judgedReadingWords = {
  reading: 'Reading',
  measured: 'Measured',
  limits: 'Right is',
  outcome: 'Outcome',
  checks: 'Readings beside their limits',
  why: 'Why',
  next: 'What next',
  codes: 'Trouble codes',
  unsaid: 'What this does not say',
  broken: 'over range',
  spreadLabel: 'Numbers',
  spread: '± is twice the standard uncertainty.',
} as const;

/**
 * The checks as rows of a table, its head first: what was read, its value, what would be right, how it came out.
 *
 * @example
 * const one = { check: 'resistance', unit: 'Ω', reading: 0, measured: 866, lowLimit: 774, highLimit: 946, uncertainty: 3, margin: 80, conformance: 1, outcome: 'conforms', mostUncertain: 'meter' } as const;
 * const readings = [{ ohms: 866, uncertainty: 3, temperature: 23, temperatureUncertainty: 1 }];
 * const judgement = { verdict: 'pass', checks: [one], advice: [], unsaid: [] } as const;
 * readingCheckRows({ kind: 'winding', judgement, readings })[1] // => ['Resistance at 23.0 °C', '866.0 ± 6.0 Ω', '774.0 to 946.0 Ω', 'conforms']
 */
export function readingCheckRows(judged: ReadingsOfKind): readonly (readonly string[])[] {
  const { reading, measured, limits, outcome } = judgedReadingWords;
  return whole(judged, 'judged', () => {
    const checks: readonly AnyCheck[] = judged.judgement.checks;
    const rows = checks.map((check) => {
      const { value, right } = written(check);
      return [nameOf(check, judged), value, right, outcomeLabels[check.outcome]];
    });
    return [[reading, measured, limits, outcome], ...rows];
  });
}

/**
 * Why a judgement is no pass, a sentence for each reading that does not conform.
 *
 * @example
 * const one = { check: 'resistance', unit: 'Ω', reading: 0, measured: 1200, lowLimit: 774, highLimit: 946, uncertainty: 3, margin: -254, conformance: 0, outcome: 'fails', mostUncertain: 'meter' } as const;
 * const readings = [{ ohms: 1200, uncertainty: 3, temperature: 23, temperatureUncertainty: 1 }];
 * const judgement = { verdict: 'fail', checks: [one], advice: [], unsaid: [] } as const;
 * readingReasonSentences({ kind: 'winding', judgement, readings }) // => ['Resistance at 23.0 °C: 1.200 ± 0.006 kΩ is outside 0.774 to 0.946 kΩ.']
 */
export function readingReasonSentences(judged: ReadingsOfKind): readonly string[] {
  return whole(judged, 'judged', () => {
    const checks: readonly AnyCheck[] = judged.judgement.checks;
    return checks.flatMap((check) => {
      const { outcome, mostUncertain } = check;
      if (outcome === 'conforms' || outcome === 'not-judged') return [];
      const name = nameOf(check, judged);
      const { value, right } = written(check);
      if (check.measured === undefined) return [say`${name}: not read.`];
      if (outcome === 'fails') return [say`${name}: ${value} is outside ${right}.`];
      if (outcome === 'marginal') {
        return [
          say`${name}: ${value} is outside ${right}, but by less than three times its standard uncertainty.`,
        ];
      }
      const source = mostUncertain && sourceNames[mostUncertain];
      const told = say`${name}: ${value} cannot be told from ${right}`;
      return [source ? say`${told}; most uncertain is ${source}.` : say`${told}.`];
    });
  });
}

/**
 * Which trouble codes a sensor that fails so could set; nothing of one that does not fail, or has no such codes.
 *
 * @example
 * const judgement = { verdict: 'pass', checks: [], advice: [], unsaid: [] } as const;
 * readingCodesSentences({ kind: 'thermistor', judgement, readings: [] }) // => []
 */
export function readingCodesSentences(judged: ReadingsOfKind): readonly string[] {
  return whole(judged, 'judged', () => {
    if (judged.kind !== 'thermistor' && judged.kind !== 'pressure') return [];
    // Across a thermistor a resistance that is too low is a signal that is too low.
    const codes = codesOfReadings(judged.kind, judged.judgement.checks);
    const named = codes.map(
      ({ code, sensor, kind }) => say`${code} (${codedSensors[sensor]}, ${codeKinds[kind]})`,
    );
    return named.length > 0 ? [troubleCodesSentence(named)] : [];
  });
}

const codedSensors: Readonly<Record<CodedSensor, string>> = {
  'coolant-temperature': 'coolant',
  'air-temperature': 'intake air',
  'manifold-pressure': 'manifold or barometric pressure',
};

const codeKinds: Readonly<Record<CodeKind, string>> = {
  circuit: 'a fault of the circuit',
  range: 'signal does not fit the other readings',
  low: 'signal too low',
  high: 'signal too high',
  intermittent: 'signal comes and goes',
};

function nameOf({ check, reading }: AnyCheck, judged: ReadingsOfKind): string {
  const name = checkNames[check];
  if (reading === undefined) return name;
  if (judged.kind === 'pressure') {
    const { gauge } = judged.readings[reading]!;
    return gauge === 0 ? name : say`${name} at ${formatMeasure(gauge, 'kPa', 1)}`;
  }
  if (judged.kind === 'two-state') return name;
  const { temperature } = judged.readings[reading]!;
  return say`${name} at ${formatMeasure(temperature, '°C', 1)}`;
}

/** A check's value and limits, in one unit with equal decimals. */
function written({ unit, measured, uncertainty, lowLimit, highLimit }: AnyCheck): {
  readonly value: string;
  readonly right: string;
} {
  const isOpen = measured !== undefined && measured >= 1e17;
  const spread = uncertainty === undefined || isOpen ? undefined : 2 * uncertainty;
  const given = [isOpen ? undefined : measured, spread, lowLimit, highLimit];
  const known = given.filter((value) => value !== undefined && Number.isFinite(value));
  const { numbers, unit: shown } = alike(known as readonly number[], unit, spread);
  let next = 0;
  const [value, more, low, high] = given.map((one) =>
    one !== undefined && Number.isFinite(one) ? numbers[next++] : undefined,
  );
  const { broken } = judgedReadingWords;
  return {
    value: isOpen
      ? broken
      : value === undefined
        ? '–'
        : more !== undefined && Number(more) > 0
          ? say`${value} ± ${more} ${shown}`
          : say`${value} ${shown}`,
    right:
      low !== undefined && high !== undefined
        ? say`${low} to ${high} ${shown}`
        : high !== undefined
          ? say`at most ${high} ${shown}`
          : low !== undefined
            ? say`at least ${low} ${shown}`
            : '–',
  };
}

/** So many digits that twice the standard uncertainty still shows. */
function alike(values: readonly number[], unit: AnyCheck['unit'], spread: number | undefined) {
  if (unit === 'Pa') {
    return {
      numbers: values.map((value) => (value / 1000).toFixed(1).replace('-', '−')),
      unit: 'kPa',
    };
  }
  if (unit === 'K' || unit === '°') {
    return { numbers: values.map((value) => value.toFixed(1).replace('-', '−')), unit };
  }
  const largest = Math.max(...values.map(Math.abs));
  const digits = spread ? Math.ceil(Math.log10(largest / spread)) + 1 : 3;
  return formatAlike(values, unit === '1' ? '%' : unit, Math.min(6, Math.max(3, digits)));
}
