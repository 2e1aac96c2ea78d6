import type { Amps, Ohms, Position, Travel, Volts } from '../units.js';
import type { CircuitFault } from './faults.js';
import type { Lead, Terminal } from './terminals.js';

/** The bench supply that feeds the sensor. */
export interface Source {
  /** Open-circuit voltage, V; 0 to 10⁶. */
  readonly volts: Volts;
  /** Internal resistance, Ω; 0 when left out. */
  readonly ohms?: Ohms;
  /** Highest current that it delivers, A; above 0. No limit when left out. */
  readonly currentLimit?: Amps;
}

/** Resistance of each lead, Ω; 0 when left out, ∞ where it is broken. */
export type Leads = Readonly<Partial<Record<Lead, Ohms>>>;

/** Which terminal each lead sits on. */
export type Connection = Readonly<Record<Lead, Terminal>>;

/** A contacting position sensor: a track, the wiper on it, and what lies between the track and the terminals. */
export interface Sensor {
  /** Resistance of the whole electrical track between its ends, Ω; ∞ where nothing conducts. */
  readonly track: Ohms;
  /** End residual between the bottom terminal and the track's bottom end, Ω; 0 when left out. */
  readonly bottomResidual?: Ohms;
  /** End residual between the top terminal and the track's top end, Ω; 0 when left out. */
  readonly topResidual?: Ohms;
  /** Resistance of the wiper's contact, Ω; 0 when left out, ∞ when the wiper is lifted. */
  readonly contact?: Ohms;
  /** Fixed resistors built in behind the terminals, Ω; each 0 when left out. */
  readonly terminalResistors?: Readonly<Partial<Record<Terminal, Ohms>>>;
  /** Where on the track the wiper stands at the closed stop; 0 (the bottom end) when left out. */
  readonly closedPosition?: Position;
  /** Where on the track the wiper stands at the open stop; 1 (the top end) when left out. */
  readonly openPosition?: Position;
}

/**
 * A resistor from the signal up to a voltage of its own, V above the load's common, or to what feeds the
 * sensor: at the source's plus, or at the terminal on the supply lead.
 */
export type PullUp =
  | { readonly ohms: Ohms; readonly volts: Volts }
  | { readonly ohms: Ohms; readonly from: 'source' | 'sensor' };

/** What hangs on the signal lead: the instrument's input and any deliberate bench load. */
export interface Load {
  /** From the signal to the load's common, Ω; no such path when left out. */
  readonly pullDown?: Ohms;
  readonly pullUp?: PullUp;
  /** Where the load's common connects: at the source's minus (when left out) or at the terminal on the ground lead. */
  readonly common?: 'source' | 'sensor';
}

/**
 * A sensor on the bench: source − limiter − supply lead − sensor − ground lead, and the signal lead from
 * the wiper's terminal to the load. All of it in SI units.
 */
export interface Circuit {
  readonly source: Source;
  /** Series limiting resistor between the source and the supply lead, Ω. */
  readonly limiter: Ohms;
  readonly leads?: Leads;
  readonly sensor: Sensor;
  readonly load: Load;
  /** Which lead sits on which terminal; supply on top, ground on bottom, signal on the wiper when left out. */
  readonly connection?: Connection;
  /** What is wrong with it; nothing when left out. */
  readonly faults?: readonly CircuitFault[];
}

/** The right connection: supply on top, ground on bottom, signal on the wiper. */
export const rightConnection: Connection = { supply: 'top', ground: 'bottom', signal: 'wiper' };

/** Where the wiper stands at a travel, of a sensor and a travel that were checked already. */
export function positionAt(sensor: Sensor, travel: Travel): Position {
  const closed = sensor.closedPosition ?? 0;
  const open = sensor.openPosition ?? 1;
  return closed * (1 - travel) + open * travel;
}
