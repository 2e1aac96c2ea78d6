import { type Circuit, type Connection, positionAt, rightConnection } from '../circuit/circuit.js';
import { type Determined, isDetermined } from '../circuit/determined.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import type { Lead } from '../circuit/terminals.js';
import type { Volts } from '../units.js';
import { type Curve, expectedCurve } from './expectedCurve.js';
import { type ExpectedWindows, expectedWindows } from './expectedWindows.js';
import { restLevelOf } from './restLevel.js';
import type { Tolerances } from './tolerances.js';

/** A voltage with the throttle closed and with it open, V. */
export interface EndVolts {
  readonly closed: Volts;
  readonly open: Volts;
}

/** What the scorer must know of the hook-up: where a sound sensor's readings lie and where a lifted wiper's go. */
export interface Expectation {
  readonly curve: Curve;
  readonly windows: ExpectedWindows;
  /** The signal with the wiper lifted, V; left out where nothing pulls it anywhere. */
  readonly restLevel?: Volts;
  /** The signal with a feed lead broken, V; left out where it has no single value. */
  readonly brokenLead: { readonly supply?: EndVolts; readonly ground?: EndVolts };
  /** The signal with the leads on wrong terminals, V, for each such connection that has one. */
  readonly wrongConnections: readonly EndVolts[];
  /** The source's voltage, V. */
  readonly source: Volts;
  /** The voltage across the sensor's end terminals with the throttle closed, V; left out where it has no single value. */
  readonly supply?: Volts;
}

/**
 * The curve and the windows of a hook-up and the level that its load pulls a lifted wiper to.
 *
 * @throws InputError for a wrong circuit or tolerance.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * expectation(circuit).restLevel // => 0
 */
export function expectation(circuit: Circuit, tolerances: Tolerances = {}): Expectation {
  const curve = expectedCurve(circuit);
  const windows = expectedWindows(circuit, tolerances);
  const restLevel = restLevelOf(circuit);
  const supply = supplyOf(circuit);
  const broken = (lead: Lead): EndVolts | undefined =>
    endVolts({ ...circuit, faults: [...(circuit.faults ?? []), { kind: 'broken-lead', lead }] });
  const [supplyBroken, groundBroken] = [broken('supply'), broken('ground')];
  return {
    curve,
    windows,
    brokenLead: {
      ...(supplyBroken && { supply: supplyBroken }),
      ...(groundBroken && { ground: groundBroken }),
    },
    wrongConnections: wrongConnectionsOf(circuit)
      .map((connection) => endVolts({ ...circuit, connection }))
      .filter((volts) => volts !== undefined),
    source: circuit.source.volts,
    ...(restLevel !== undefined && { restLevel }),
    ...(supply !== undefined && { supply }),
  };
}

function endVolts(circuit: Circuit): EndVolts | undefined {
  const [closed, open] = [0, 1].map(
    (travel) => solveOperatingPoint(circuit, positionAt(circuit.sensor, travel)).output,
  ) as [Determined<Volts>, Determined<Volts>];
  return isDetermined(closed) && isDetermined(open) ? { closed, open } : undefined;
}

/** Every way to put the three leads on the three terminals but the one that is meant. */
function wrongConnectionsOf({ connection = rightConnection }: Circuit): readonly Connection[] {
  const terminals = [connection.supply, connection.ground, connection.signal] as const;
  return (
    [
      [1, 0, 2],
      [0, 2, 1],
      [2, 1, 0],
      [1, 2, 0],
      [2, 0, 1],
    ] as const
  ).map(([supply, ground, signal]) => ({
    supply: terminals[supply],
    ground: terminals[ground],
    signal: terminals[signal],
  }));
}

function supplyOf(circuit: Circuit): Volts | undefined {
  const { nodes } = solveOperatingPoint(circuit, positionAt(circuit.sensor, 0));
  const { supply, ground } = circuit.connection ?? rightConnection;
  const [high, low] = [nodes[supply], nodes[ground]];
  if (high === undefined || low === undefined || !isDetermined(high) || !isDetermined(low)) {
    return undefined;
  }
  return high - low;
}
