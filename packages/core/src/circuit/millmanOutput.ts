import type { Ohms, Position, Volts } from '../units.js';
import type { Circuit } from './circuit.js';

/** The three legs that meet at the wiper's contact, and the load at the end of the third. */
export interface ContactLegs {
  readonly source: Volts;
  /** Of the leg up to the source without the track, Ω. */
  readonly above: Ohms;
  /** Of the leg down to common without the track, Ω. */
  readonly below: Ohms;
  readonly track: Ohms;
  /** Between the track and the load: contact, terminal resistor and signal lead, Ω. */
  readonly signal: Ohms;
  /** Of the load as one source: its open-circuit voltage, V, and its resistance, Ω; ∞ without a load. */
  readonly loadVolts: Volts;
  readonly load: Ohms;
}

/**
 * The legs of a checked circuit in which all of them meet at the contact: the right connection, no faults, a
 * source without a current limit, the load's common and pull-up at the source, every part but the load's finite.
 * Nothing for any other circuit.
 */
export function contactLegs(circuit: Circuit): ContactLegs | undefined {
  const { source, leads = {}, sensor, load } = circuit;
  const { pullDown = Infinity, pullUp } = load;
  if (circuit.connection || circuit.faults?.length || source.currentLimit !== undefined)
    return undefined;
  if (
    pullDown === 0 ||
    load.common === 'sensor' ||
    (pullUp && 'from' in pullUp) ||
    pullUp?.ohms === 0
  )
    return undefined;
  const built = sensor.terminalResistors ?? {};
  const above =
    (source.ohms ?? 0) +
    circuit.limiter +
    (leads.supply ?? 0) +
    (built.top ?? 0) +
    (sensor.topResidual ?? 0);
  const below = (sensor.bottomResidual ?? 0) + (built.bottom ?? 0) + (leads.ground ?? 0);
  const signal = (sensor.contact ?? 0) + (built.wiper ?? 0) + (leads.signal ?? 0);
  const { track } = sensor;
  if (!Number.isFinite(above + below + signal + track) || track < 1e-9) return undefined;
  const down = 1 / pullDown;
  const up = pullUp ? 1 / pullUp.ohms : 0;
  const conductance = down + up;
  return {
    source: source.volts,
    above,
    below,
    track,
    signal,
    loadVolts: pullUp && conductance > 0 ? pullUp.volts * (up / conductance) : 0,
    load: 1 / conductance,
  };
}

/**
 * The output of such a circuit: Millman's theorem at the contact, multiplied out so that 0 Ω legs are no
 * special case, and the load's divider behind it. Plain numbers, for loops over many of them.
 *
 * @param up Of the leg up to the source, its part of the track included, Ω.
 * @param down Of the leg down to common, its part of the track included, Ω.
 */
export function millmanOutput(
  source: Volts,
  up: Ohms,
  down: Ohms,
  signal: Ohms,
  loadVolts: Volts,
  load: Ohms,
): Volts {
  if (load === Infinity) return (source * down) / (up + down);
  const out = signal + load;
  const contact =
    (source * down * out + loadVolts * up * down) / (down * out + up * out + up * down);
  return (contact * load + loadVolts * signal) / out;
}

/** The output of a checked circuit by its legs, at a position of the wiper. */
export function legsOutput(legs: ContactLegs, position: Position): Volts {
  const { source, above, below, track, signal, loadVolts, load } = legs;
  const up = above + (1 - position) * track;
  return millmanOutput(source, up, below + position * track, signal, loadVolts, load);
}
