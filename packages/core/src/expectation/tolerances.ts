import type { Circuit } from '../circuit/circuit.js';
import type { Sensitivities } from '../circuit/sensitivities.js';
import type { Fraction, Position } from '../units.js';

/** How far the parts may be from their nominal values, either way; each 0 when left out. */
export interface Tolerances {
  /** Of the source's voltage, fraction, 0 to 1; 0 when left out. */
  readonly source?: Fraction;
  /** Of the limiter, fraction, 0 to 1; 0 when left out. */
  readonly limiter?: Fraction;
  /** Of the track's resistance, fraction, 0 to 1; 0 when left out. */
  readonly track?: Fraction;
  /** Of the residual at the track's bottom end, fraction, 0 to 1; 0 when left out. */
  readonly bottomResidual?: Fraction;
  /** Of the residual at the track's top end, fraction, 0 to 1; 0 when left out. */
  readonly topResidual?: Fraction;
  /** Of the wiper's contact resistance, fraction, 0 to 1; 0 when left out. */
  readonly contact?: Fraction;
  /** Of the pull-down, fraction, 0 to 1; 0 when left out. */
  readonly pullDown?: Fraction;
  /** Of the pull-up's resistance, fraction, 0 to 1; 0 when left out. */
  readonly pullUp?: Fraction;
  /** Of the pull-up's own voltage, fraction, 0 to 1; 0 when left out. */
  readonly pullUpVolts?: Fraction;
  /** Of the wiper's place at the closed stop, fraction of the track, 0 to 1; 0 when left out. */
  readonly closedPosition?: Position;
  /** Of the wiper's place at the open stop, fraction of the track, 0 to 1; 0 when left out. */
  readonly openPosition?: Position;
}

/** A part with a tolerance: its value, how far it may be off, how to change it and how the output answers to it. */
export interface TolerancedPart {
  readonly name: Exclude<keyof Tolerances, 'closedPosition' | 'openPosition'>;
  readonly value: number;
  readonly halfWidth: number;
  readonly withValue: (circuit: Circuit, value: number) => Circuit;
  readonly sensitivity: (from: Sensitivities) => number;
}

/** The parts of a circuit that have a tolerance above 0. */
export function tolerancedParts(
  circuit: Circuit,
  tolerances: Tolerances,
): readonly TolerancedPart[] {
  const { source, limiter, sensor, load } = circuit;
  const { pullDown, pullUp } = load;
  const parts: TolerancedPart[] = [];
  const add = (
    name: TolerancedPart['name'],
    value: number | undefined,
    withValue: TolerancedPart['withValue'],
    sensitivity: TolerancedPart['sensitivity'],
  ): void => {
    const halfWidth = (value ?? 0) * (tolerances[name] ?? 0);
    if (value !== undefined && halfWidth > 0 && Number.isFinite(halfWidth)) {
      parts.push({ name, value, halfWidth, withValue, sensitivity });
    }
  };
  add(
    'source',
    source.volts,
    (at, volts) => ({ ...at, source: { ...at.source, volts } }),
    (s) => s.perVolt.source!,
  );
  add(
    'limiter',
    limiter,
    (at, ohms) => ({ ...at, limiter: ohms }),
    (s) => s.perOhm.limiter!,
  );
  add(
    'track',
    sensor.track,
    (at, track) => ({ ...at, sensor: { ...at.sensor, track } }),
    (s) => s.perTrackOhm,
  );
  for (const name of ['bottomResidual', 'topResidual', 'contact'] as const) {
    add(
      name,
      sensor[name],
      (at, ohms) => ({ ...at, sensor: { ...at.sensor, [name]: ohms } }),
      (s) => s.perOhm[name]!,
    );
  }
  add(
    'pullDown',
    pullDown,
    (at, ohms) => ({ ...at, load: { ...at.load, pullDown: ohms } }),
    (s) => s.perOhm.pullDown!,
  );
  if (!pullUp) return parts;
  add(
    'pullUp',
    pullUp.ohms,
    (at, ohms) => ({ ...at, load: { ...at.load, pullUp: { ...pullUpOf(at), ohms } } }),
    (s) => s.perOhm.pullUp!,
  );
  if ('volts' in pullUp) {
    add(
      'pullUpVolts',
      pullUp.volts,
      (at, volts) => ({ ...at, load: { ...at.load, pullUp: { ohms: pullUpOf(at).ohms, volts } } }),
      (s) => s.perVolt.pullUpSource!,
    );
  }
  return parts;
}

function pullUpOf(circuit: Circuit): NonNullable<Circuit['load']['pullUp']> {
  return circuit.load.pullUp!;
}
