import { type Circuit, type Connection, positionAt, rightConnection } from '../circuit/circuit.js';
import { type Determined, isDetermined } from '../circuit/determined.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import type { Lead, Terminal } from '../circuit/terminals.js';
import type { Volts } from '../units.js';

/** A voltage with the throttle closed and with it open, V. */
export interface EndVolts {
  readonly closed: Volts;
  readonly open: Volts;
}

/** Levels of a hook-up at which its signal lies when leads are broken or on wrong terminals. */
export interface HookUpLevels {
  /** The signal with a feed lead broken; none where it has no single value. */
  readonly brokenLead: Readonly<Record<'supply' | 'ground', EndVolts | undefined>>;
  /**
   * The signal for each way to put the leads on the terminals that leaves the signal lead on another terminal, as far
   * as it has one. With the feed leads alone swapped the readings are mirrored, which may look like the right ones.
   */
  readonly connections: readonly EndVolts[];
  /** The signal with the feed leads exchanged, as far as it has one. */
  readonly exchanged: EndVolts | undefined;
  /** The source's voltage, V. */
  readonly source: Volts;
  /** The voltage across the sensor's end terminals, throttle closed, V; none where it has no single value. */
  readonly supply: Volts | undefined;
}

/** Where the signal of a checked circuit goes when its leads are broken or mixed up. */
export function hookUpLevels(circuit: Circuit): HookUpLevels {
  const { faults = [], connection = rightConnection } = circuit;
  const broken = (lead: Lead): EndVolts | undefined =>
    endVolts({ ...circuit, faults: [...faults, { kind: 'broken-lead', lead }] });
  const { nodes } = solveOperatingPoint(circuit, positionAt(circuit.sensor, 0));
  return {
    brokenLead: { supply: broken('supply'), ground: broken('ground') },
    connections: everyConnection()
      .filter(({ signal }) => signal !== connection.signal)
      .map((way) => endVolts({ ...circuit, connection: way }))
      .filter((volts) => volts !== undefined),
    exchanged: endVolts({
      ...circuit,
      connection: { ...connection, supply: connection.ground, ground: connection.supply },
    }),
    source: circuit.source.volts,
    supply: difference(nodes[connection.supply]!, nodes[connection.ground]!),
  };
}

function endVolts(circuit: Circuit): EndVolts | undefined {
  const at = (travel: number): Determined<Volts> =>
    solveOperatingPoint(circuit, positionAt(circuit.sensor, travel)).output;
  const [closed, open] = [at(0), at(1)];
  return isDetermined(closed) && isDetermined(open) ? { closed, open } : undefined;
}

function everyConnection(): readonly Connection[] {
  const terminals: readonly Terminal[] = ['bottom', 'wiper', 'top'];
  const at = (place: number): Terminal => terminals[place % 3]!;
  return [0, 1, 2].flatMap((first) =>
    [1, 2].map((step) => ({
      supply: at(first),
      ground: at(first + step),
      signal: at(first + 2 * step),
    })),
  );
}

function difference(high: Determined<Volts>, low: Determined<Volts>): Volts | undefined {
  return isDetermined(high) && isDetermined(low) ? high - low : undefined;
}
