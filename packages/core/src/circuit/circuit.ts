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
  | {
      /** Its resistance, Ω: 0, or from 10⁻¹² to 10¹⁸, or `Infinity` for no connection. */
      readonly ohms: Ohms;
      /** The voltage that it leads to, V above the load's common, 0 to 10⁶. */
      readonly volts: Volts;
    }
  | {
      /** Its resistance, Ω: 0, or from 10⁻¹² to 10¹⁸, or `Infinity` for no connection. */
      readonly ohms: Ohms;
      /** What it is tied to: the source's plus, or the sensor's terminal on the supply lead. */
      readonly from: 'source' | 'sensor';
    };

/** What hangs on the signal lead: the instrument's input and any deliberate bench load. */
export interface Load {
  /** From the signal to the load's common, Ω: 0, or from 10⁻¹² to 10¹⁸, or `Infinity`; no such path when left out. */
  readonly pullDown?: Ohms;
  /** A resistor from the signal up; none when left out. */
  readonly pullUp?: PullUp;
  /** Where the load's common connects: at the source's minus (when left out) or at the terminal on the ground lead. */
  readonly common?: 'source' | 'sensor';
}

/**
 * A sensor on the bench: source − limiter − supply lead − sensor − ground lead, and the signal lead from
 * the wiper's terminal to the load. All of it in SI units.
 */
export interface Circuit {
  /** What feeds the sensor, through the limiter. */
  readonly source: Source;
  /**
   * Series limiting resistor between the source and the supply lead, Ω: 0 (none), or from 10⁻¹² to 10¹⁸, or `Infinity` for no connection.
   */
  readonly limiter: Ohms;
  /** Resistance of each lead, Ω, 0 or more; a lead left out has 0 Ω, and so have all when this is left out. */
  readonly leads?: Leads;
  /** The sensor at the end of the leads. */
  readonly sensor: Sensor;
  /** What hangs on the signal lead; `{}` for nothing. */
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
