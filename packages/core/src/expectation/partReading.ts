import type { Circuit } from '../circuit/circuit.js';
import { circuitNetwork } from '../circuit/circuitNetwork.js';
import { isDetermined } from '../circuit/determined.js';
import type { CircuitFault } from '../circuit/faults.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import { type Sensitivities, sensitivities } from '../circuit/sensitivities.js';
import { solveNetwork } from '../circuit/solveNetwork.js';
import type { Terminal } from '../circuit/terminals.js';
import { InputError } from '../errors.js';
import { checkKind, listOf } from '../fields.js';
import { above0, between } from '../guard.js';
import type { Ohms, Position, Volts } from '../units.js';

/** A reading that says something of the parts, with the wiper at a known place. */
export type PartReading =
  /** Of an ohmmeter between two terminals of the sensor off its hook-up. */
  | {
      readonly kind: 'ohms';
      /** The two terminals that the meter was held to. */
      readonly between: readonly [Terminal, Terminal];
      /** Fraction of the track below the wiper, 0 to 1. */
      readonly position: Position;
      /** Ω, 0 to 10¹⁸. */
      readonly ohms: Ohms;
      /** Standard uncertainty, Ω, above 0. */
      readonly uncertainty: Ohms;
    }
  /** Of the instrument on the hook-up. */
  | {
      readonly kind: 'volts';
      /** Fraction of the track below the wiper, 0 to 1. */
      readonly position: Position;
      /** V, −10⁶ to 10⁶. */
      readonly volts: Volts;
      /** Standard uncertainty, V, above 0. */
      readonly uncertainty: Volts;
    };

/** What a circuit makes a reading, and how that answers to each resistance, in the reading's unit per Ω. */
export interface ModelledReading {
  readonly value: number;
  readonly perOhm: Sensitivities['perOhm'];
  readonly perTrackOhm: number;
}

const position = between(0, 1);

const readingRules = {
  ohms: {
    between: listOf(['bottom', 'wiper', 'top'], 2, 2),
    position,
    ohms: between(0, 1e18, 'Ω'),
    uncertainty: above0('Ω'),
  },
  volts: { position, volts: between(-1e6, 1e6, 'V'), uncertainty: above0('V') },
};

/** Refuses a reading with a missing or impossible field, by path. */
export function checkPartReading(reading: PartReading, path: string): void {
  checkKind(reading, path, readingRules);
  if (reading.kind === 'volts') return;
  if (reading.between[0] !== reading.between[1]) return;
  throw new InputError(
    'same-terminal',
    `${path}.between`,
    `${path}.between names ${reading.between[0]} twice; an ohmmeter reads between two terminals.`,
  );
}

/**
 * What a checked circuit makes a reading, and how it answers to each resistance, exactly: the instrument's by
 * the adjoint network, the ohmmeter's by the square of each part's current for 1 A through the terminals, since
 * a network read at the terminals that feed it is its own adjoint.
 *
 * @throws InputError `no-output` at the path where the circuit gives it no single value.
 */
export function modelledReading(
  circuit: Circuit,
  reading: PartReading,
  path: string,
): ModelledReading {
  const modelled =
    reading.kind === 'volts'
      ? modelledVolts(circuit, reading.position)
      : modelledOhms(circuit, reading.position, reading.between);
  if (modelled) return modelled;
  throw new InputError(
    'no-output',
    path,
    `${path} has no single value on this circuit; give a hook-up and a sensor that conduct there.`,
  );
}

function modelledVolts(circuit: Circuit, position: Position): ModelledReading | undefined {
  const { output } = solveOperatingPoint(circuit, position);
  const answers = sensitivities(circuit, position);
  return isDetermined(output) && answers ? { value: output, ...answers } : undefined;
}

function modelledOhms(
  { sensor, faults = [] }: Circuit,
  position: Position,
  [from, to]: readonly [Terminal, Terminal],
): ModelledReading | undefined {
  const apart = Infinity;
  const { elements } = circuitNetwork(
    {
      source: { volts: 0 },
      limiter: apart,
      leads: { supply: apart, ground: apart, signal: apart },
      sensor,
      load: {},
      faults: faults.filter(({ kind }) => ofTheSensor.includes(kind)),
    },
    position,
  );
  const { volts, amps } = solveNetwork({
    reference: from,
    elements: [...elements, { id: 'ohmmeter', from, to, ohms: apart, amps: 1 }],
  });
  const value = volts[to]!;
  if (!isDetermined(value)) return undefined;
  const perOhm: Record<string, number> = {};
  let perTrackOhm = 0;
  for (const element of elements) {
    if (element.volts !== undefined) continue;
    const through = amps[element.id]!;
    if (!isDetermined(through)) return undefined;
    perOhm[element.id] = through * through;
    if (/^track(Above|Below)/.test(element.id) && element.ohms < apart)
      perTrackOhm += through * through * (element.ohms / sensor.track);
  }
  return { value, perOhm, perTrackOhm };
}

const ofTheSensor: readonly CircuitFault['kind'][] = [
  'shorted-terminals',
  'broken-track',
  'shorted-track',
  'lifted-wiper',
];
