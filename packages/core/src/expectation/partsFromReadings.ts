import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { type FieldRule, listOf } from '../fields.js';
import { finiteBetween, oneOf, positive } from '../guard.js';
import { singularValues } from '../statistics/singularValues.js';
import type { Ohms } from '../units.js';
import { checkPartReading, modelledReading, type PartReading } from './partReading.js';

/** A part whose resistance can be found from readings. */
export type FoundPart =
  | 'track'
  | 'bottomResidual'
  | 'topResidual'
  | 'contact'
  | 'pullDown'
  | 'limiter';

/** The parts that fit a set of readings best, or what keeps them from being found. */
export type PartsFound =
  | {
      readonly kind: 'determined';
      /** Each part with its standard uncertainty, both Ω. */
      readonly parts: Readonly<
        Partial<Record<FoundPart, { readonly ohms: Ohms; readonly uncertainty: Ohms }>>
      >;
      /** Of the parts in the order asked for, Ω². */
      readonly covariance: readonly (readonly number[])[];
      /** How many readings there are more than parts, 0 or more. */
      readonly degreesOfFreedom: number;
      /** Sum of the squared residuals over their uncertainties, 0 or more, without unit; only where there are spare readings. */
      readonly chiSquare?: number;
      /** Reading less model, in the order and the units of the readings. */
      readonly residuals: readonly number[];
    }
  | {
      readonly kind: 'not-determined';
      /** The parts that the readings leave open, alone or with each other. */
      readonly parameters: readonly FoundPart[];
      /** Why the readings don't determine it, as a code. */
      readonly reason: NotDeterminedReason;
    }
  | { readonly kind: 'not-converged' };

/** Why readings do not determine a part. */
export type NotDeterminedReason =
  /** No reading answers to it. */
  | 'no-effect'
  /** Voltages fix ratios only, and no resistance is known beside them. */
  | 'no-known-resistance'
  /** Fewer independent readings than parts. */
  | 'too-few-readings'
  /** The readings answer to these parts only together. */
  | 'not-separable';

/** A direction whose answer is this much weaker than the strongest is one that the readings don't determine. */
const rankTolerance = 1e-9;
/** A part whose whole size moves no reading by this many standard uncertainties has no effect. */
const noEffect = 1e-6;
const mostIterations = 300;

/** Found as logarithms, which keeps them above 0 and steps over decades; the others are straight and may be 0. */
const byLogarithm: readonly FoundPart[] = ['track', 'pullDown', 'limiter'];
const foundParts: readonly FoundPart[] = [
  ...byLogarithm,
  'bottomResidual',
  'topResidual',
  'contact',
];

/**
 * Finds resistances of a sensor and its hook-up from ohmmeter readings, voltages or both, by least squares
 * weighted with the readings' stated uncertainties.
 *
 * The covariance comes from those uncertainties alone; the residuals only check them, by chi-square against its
 * degrees of freedom, where there are spare readings. Known parts, positions and the source count as exact.
 * Voltages alone fix ratios only, so that beside them one resistance must be known or measured.
 *
 * A part is not determined where the weighted Jacobian, its columns scaled to length 1, has a singular value
 * below 1e-9 of its largest with that part in its direction; or where a change of the part by its own size (of
 * a residual or the contact: by the track's) moves the readings by less than 1e-6 standard uncertainties.
 *
 * Method: Gauss–Newton steps damped as K. Levenberg (1944) and D. Marquardt (1963) did (from memory), exact
 * derivatives; covariance as in GUM H.3, for several readings of unequal weight (from memory).
 *
 * @param circuit The hook-up: its values of the parts wanted are first guesses, all others are taken as known.
 * @param wanted The parts to find, 1 to 6, each once; track, pull-down and limiter need a guess above 0.
 * @param readings 1 to 1000.
 * @throws InputError for a wrong circuit, part or reading, or `no-output` at a reading that has no single value there.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * const ends = { kind: 'ohms', between: ['bottom', 'top'], position: 0, ohms: 4300, uncertainty: 10 };
 * const closed = { kind: 'ohms', between: ['bottom', 'wiper'], position: 0, ohms: 55, uncertainty: 1 };
 * const found = partsFromReadings(circuit, ['track', 'bottomResidual'], [ends, closed]);
 * found.parts.track.ohms.toFixed(3) // => '4245.000'
 * found.parts.track.uncertainty.toFixed(2) // => '10.05'
 * partsFromReadings(circuit, ['track', 'contact'], [ends]) // => { kind: 'not-determined', parameters: ['contact'], reason: 'no-effect' }
 */
export function partsFromReadings(
  circuit: Circuit,
  wanted: readonly FoundPart[],
  readings: readonly PartReading[],
): PartsFound {
  checkCircuit(circuit);
  checkWanted(circuit, wanted);
  listOf(checkPartReading as FieldRule, 1, 1000)(readings, 'readings');
  const { fit, converged } = bestFit(circuit, wanted, readings);
  const refusal = openParts(fit, readings);
  if (refusal) return refusal;
  if (!converged) return { kind: 'not-converged' };
  return describe(fit, readings);
}

function checkWanted(circuit: Circuit, wanted: readonly FoundPart[]): void {
  listOf(foundParts, 1, foundParts.length)(wanted, 'wanted');
  wanted.forEach((part, i) => {
    const left = foundParts.filter((one) => !wanted.slice(0, i).includes(one));
    oneOf(part, left, `wanted[${i}]`);
    const path = `circuit.${{ limiter: '', pullDown: 'load.' }[part as string] ?? 'sensor.'}${part}`;
    const guess = guessOf(circuit, part);
    if (byLogarithm.includes(part)) positive(guess, path, 'Ω');
    else finiteBetween(guess ?? 0, 0, 1e18, path, 'Ω');
  });
}

function guessOf({ limiter, sensor, load }: Circuit, part: FoundPart): Ohms | undefined {
  if (part === 'limiter') return limiter;
  return part === 'pullDown' ? load.pullDown : sensor[part];
}

function withPart(circuit: Circuit, part: FoundPart, ohms: Ohms): Circuit {
  if (part === 'limiter') return { ...circuit, limiter: ohms };
  if (part === 'pullDown') return { ...circuit, load: { ...circuit.load, pullDown: ohms } };
  return { ...circuit, sensor: { ...circuit.sensor, [part]: ohms } };
}

/** A set of values for the parts, with how it fits. */
interface Fit {
  readonly wanted: readonly FoundPart[];
  readonly ohms: readonly Ohms[];
  /** Reading less model over its uncertainty. */
  readonly misses: readonly number[];
  /** What each part adds to the readings per Ω, over their uncertainties, part by part. */
  readonly columns: readonly (readonly number[])[];
  /** Size of each part that counts as a change of 1, Ω: its own, or the track's. */
  readonly sizes: readonly Ohms[];
  readonly cost: number;
}

function fitOf(
  circuit: Circuit,
  wanted: readonly FoundPart[],
  readings: readonly PartReading[],
  ohms: readonly Ohms[],
): Fit {
  const at = wanted.reduce((so, part, j) => withPart(so, part, ohms[j]!), circuit);
  const models = readings.map((reading, i) => modelledReading(at, reading, `readings[${i}]`));
  const misses = readings.map((reading, i) => {
    const read = reading.kind === 'ohms' ? reading.ohms : reading.volts;
    return (read - models[i]!.value) / reading.uncertainty;
  });
  const columns = wanted.map((part) =>
    models.map(({ perOhm, perTrackOhm }, i) => {
      const answer = part === 'track' ? perTrackOhm : (perOhm[part] ?? 0);
      return answer / readings[i]!.uncertainty;
    }),
  );
  const sizes = wanted.map((part, j) => (byLogarithm.includes(part) ? ohms[j]! : at.sensor.track));
  return { wanted, ohms, misses, columns, sizes, cost: squares(misses) };
}

/**
 * The fit from the guess. Where that misses by more than the readings allow it may have stopped in a dip beside
 * the best one: load and limiter are tried a decade either way too, and the lowest is kept.
 */
function bestFit(
  circuit: Circuit,
  wanted: readonly FoundPart[],
  readings: readonly PartReading[],
): Descent {
  const spare = Math.max(0, readings.length - wanted.length);
  const allowed = spare + 5 * Math.sqrt(2 * spare) + 1e-6;
  const guess = wanted.map((part) => guessOf(circuit, part) ?? 0);
  const starts = (['pullDown', 'limiter'] as const).reduce<readonly (readonly Ohms[])[]>(
    (so, part) =>
      wanted.includes(part)
        ? [1, 10, 0.1].flatMap((factor) =>
            so.map((ohms) => ohms.map((at, j) => (wanted[j] === part ? at * factor : at))),
          )
        : so,
    [guess],
  );
  let best: Descent | undefined;
  for (const start of starts) {
    const found = descend(circuit, wanted, readings, start);
    if (!best || found.fit.cost < best.fit.cost) best = found;
    if (best.fit.cost <= allowed) break;
  }
  return best!;
}

interface Descent {
  readonly fit: Fit;
  readonly converged: boolean;
}

/** Damped steps from a start until one more would lower the cost by nothing that counts. */
function descend(
  circuit: Circuit,
  wanted: readonly FoundPart[],
  readings: readonly PartReading[],
  start: readonly Ohms[],
): Descent {
  let fit = fitOf(circuit, wanted, readings, start);
  let damping = 1e-3;
  for (let iteration = 0; ; iteration++) {
    const { ohms, gain } = stepFrom(fit, damping);
    const isOver = gain <= 1e-20 + 1e-15 * fit.cost;
    // Rounding may keep the last gains from being that small: they count for nothing all the same.
    if (isOver || damping > 1e12 || iteration === mostIterations)
      return { fit, converged: gain <= 1e-9 * (1 + fit.cost) };
    const next = fitOf(circuit, wanted, readings, ohms);
    if (next.cost < fit.cost) {
      fit = next;
      damping = damping < 1e-16 ? 0 : damping / 10;
    } else damping = Math.max(damping * 8, 1e-12);
  }
}

/** A step, and by how much the cost would fall in the straight model without damping. */
function stepFrom(
  fit: Fit,
  damping: number,
): { readonly ohms: readonly Ohms[]; readonly gain: number } {
  const { wanted, ohms, misses, columns, sizes } = fit;
  // A part that stands at 0 Ω and is pulled below stays there: it takes no part in the step.
  let free = wanted.map((_, j) => j);
  for (;;) {
    const lengths = free.map((j) => Math.hypot(...columns[j]!) || 1);
    const scaled = free.map((j, k) => columns[j]!.map((at) => at / lengths[k]!));
    const { left, values, right } = singularValues(scaled);
    const strongest = Math.max(...values);
    let gain = 0;
    const step = wanted.map(() => 0);
    values.forEach((value, d) => {
      if (!(value > rankTolerance * strongest)) return;
      const along = left[d]!.reduce((sum, at, row) => sum + at * misses[row]!, 0);
      gain += along * along;
      const length = (along * value) / (value * value + damping * strongest * strongest);
      free.forEach((j, k) => {
        step[j]! += (length * right[d]![k]!) / lengths[k]!;
      });
    });
    const held = free.filter((j) => ohms[j] === 0 && step[j]! < 0);
    if (held.length > 0) {
      free = free.filter((j) => !held.includes(j));
      continue;
    }
    return { ohms: wanted.map((part, j) => moved(part, ohms[j]!, step[j]!, sizes[j]!)), gain };
  }
}

function moved(part: FoundPart, ohms: Ohms, step: Ohms, size: Ohms): Ohms {
  if (byLogarithm.includes(part)) {
    const decades = Math.min(3, Math.max(-3, step / size));
    return Math.min(1e15, Math.max(1e-9, ohms * Math.exp(decades)));
  }
  const next = Math.min(1e15, ohms + step);
  return next < 1e-12 ? 0 : next;
}

/** What the readings leave open at the best fit. */
function openParts(
  { wanted, ohms, columns, sizes }: Fit,
  readings: readonly PartReading[],
): PartsFound | undefined {
  const refusal = (parameters: readonly FoundPart[], reason: NotDeterminedReason): PartsFound => ({
    kind: 'not-determined',
    parameters,
    reason,
  });
  const lengths = columns.map((column) => Math.hypot(...column));
  const idle = wanted.filter((_, j) => !(lengths[j]! * sizes[j]! > noEffect));
  if (idle.length > 0) return refusal(idle, 'no-effect');
  const scaled = columns.map((column, j) => column.map((at) => at / lengths[j]!));
  const { values, right } = singularValues(scaled);
  const strongest = Math.max(...values);
  const lost = right.filter((_, d) => !(values[d]! > rankTolerance * strongest));
  const open = wanted.filter((_, j) => lost.some((direction) => Math.abs(direction[j]!) > 1e-6));
  if (open.length === 0) return undefined;
  // Where scaling every part alike changes no reading there is no resistance to compare with.
  const ratiosOnly = readings.every((_, i) => {
    const parts = columns.map((column, j) => column[i]! * ohms[j]!);
    const sum = parts.reduce((total, at) => total + at, 0);
    return Math.abs(sum) <= 1e-9 * parts.reduce((total, at) => total + Math.abs(at), 0);
  });
  if (ratiosOnly) return refusal(open, 'no-known-resistance');
  return refusal(open, readings.length < wanted.length ? 'too-few-readings' : 'not-separable');
}

function describe(
  { wanted, ohms, misses, columns, cost }: Fit,
  readings: readonly PartReading[],
): PartsFound {
  const lengths = columns.map((column) => Math.hypot(...column));
  const { values, right } = singularValues(
    columns.map((column, j) => column.map((at) => at / lengths[j]!)),
  );
  const covariance = wanted.map((_, j) =>
    wanted.map((__, k) =>
      values.reduce(
        (sum, value, d) =>
          sum + (right[d]![j]! / (value * lengths[j]!)) * (right[d]![k]! / (value * lengths[k]!)),
        0,
      ),
    ),
  );
  const parts = Object.fromEntries(
    wanted.map((part, j) => [part, { ohms: ohms[j]!, uncertainty: Math.sqrt(covariance[j]![j]!) }]),
  );
  const degreesOfFreedom = readings.length - wanted.length;
  return {
    kind: 'determined',
    parts,
    covariance,
    degreesOfFreedom,
    ...(degreesOfFreedom > 0 && { chiSquare: cost }),
    residuals: misses.map((miss, i) => miss * readings[i]!.uncertainty),
  };
}

function squares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
