import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import type { Position, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';
import { turningPoints } from './turningPoints.js';

/** The largest departure of a loaded output from a straight line, and where it stands. */
export interface LargestError {
  /** Where it stands: fraction of the track, 0 to 1. */
  readonly position: Position;
  /** Line less output, V: positive where the load bends the output down. */
  readonly volts: Volts;
}

/** How a load bends the output between the stops. */
export interface LoadingErrors {
  /** Against the same hook-up without a load. */
  readonly fromUnloaded: LargestError;
  /** Against the straight line through the loaded output at both stops. */
  readonly fromEndLine: LargestError;
  /** The rule 4/27 · track / load · source, where it may be used at all. */
  readonly rule?: {
    readonly volts: Volts;
    /** How much too large it is, as a fraction of the exact value. */
    readonly excess: number;
  };
}

/**
 * The two kinds of loading error, each with the place and size of its largest value.
 *
 * The rule 4/27 · track / load is given only for a plain pull-down with no limiter, leads, residuals or other
 * resistance and the wiper going from end to end; it is the limit for a small ratio, always too large: by about a
 * quarter of the ratio, 2 % at 0.1. It follows from x²(1−x)m / (1 + m x(1−x)) with m = track / load, near x = 2/3.
 *
 * @throws InputError for a wrong circuit, or `no-output` where the output has no single value.
 *
 * @example
 * const circuit = { source: { volts: 1 }, limiter: 0, sensor: { track: 1000 }, load: { pullDown: 500 } };
 * const { fromUnloaded } = loadingErrors(circuit);
 * fromUnloaded.volts.toFixed(6) // => '0.207107'
 * fromUnloaded.position.toFixed(4) // => '0.7071'
 */
export function loadingErrors(circuit: Circuit): LoadingErrors {
  checkCircuit(circuit);
  const loaded = outputFunction(circuit);
  const unloaded = outputFunction({ ...circuit, load: {} });
  const [closed, open] = [positionAt(circuit.sensor, 0), positionAt(circuit.sensor, 1)];
  const [from, to] = [Math.min(closed, open), Math.max(closed, open)];
  const [first, last] = [loaded(from), loaded(to)];
  const endLine = (at: Position): Volts =>
    from === to ? first : first + ((last - first) * (at - from)) / (to - from);
  const largest = (line: (at: Position) => Volts): LargestError => {
    const error = (at: Position): Volts => line(at) - loaded(at);
    return [from, ...turningPoints(error, from, to), to]
      .map((position) => ({ position, volts: error(position) }))
      .reduce((most, one) => (Math.abs(one.volts) > Math.abs(most.volts) ? one : most));
  };
  const fromUnloaded = largest(unloaded);
  const rule = ruleOfThumb(circuit, fromUnloaded.volts);
  return { fromUnloaded, fromEndLine: largest(endLine), ...(rule && { rule }) };
}

function ruleOfThumb(circuit: Circuit, exact: Volts): LoadingErrors['rule'] {
  const { source, limiter, sensor, load, leads = {} } = circuit;
  const others = [
    source.ohms,
    limiter,
    leads.supply,
    leads.ground,
    leads.signal,
    sensor.bottomResidual,
    sensor.topResidual,
    sensor.contact,
    ...Object.values(sensor.terminalResistors ?? {}),
  ];
  const plain =
    others.every((ohms) => !ohms) && !load.pullUp && !circuit.connection && !circuit.faults?.length;
  const ends = [sensor.closedPosition ?? 0, sensor.openPosition ?? 1].sort((a, b) => a - b);
  if (!plain || !load.pullDown || !(exact > 0) || ends[0] !== 0 || ends[1] !== 1) return undefined;
  const volts = (4 / 27) * (sensor.track / load.pullDown) * source.volts;
  return { volts, excess: volts / exact - 1 };
}
