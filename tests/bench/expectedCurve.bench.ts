import { expectedCurve } from '@truesweep/core';
import { lusolve } from 'mathjs';
import { test } from 'vitest';
import { keepsRatio } from './keepsRatio.js';

const points = 1000;
const circuit = {
  source: { volts: 5, ohms: 0.1 },
  limiter: 1000,
  leads: { supply: 0.2, ground: 0.3, signal: 0.4 },
  sensor: { track: 5000, bottomResidual: 30, topResidual: 20, contact: 50 },
  load: { pullDown: 10e6, pullUp: { ohms: 1e6, volts: 5 } },
};
const { source, limiter, leads, sensor, load } = circuit;

/** Millman's theorem at the contact and the load's divider behind it, written out by hand for such a circuit. */
function bareLoop({ source, limiter, leads, sensor, load }: typeof circuit) {
  const travel = new Float64Array(points);
  const out = new Float64Array(points);
  const { volts } = source;
  const { track } = sensor;
  const above = source.ohms + limiter + leads.supply + sensor.topResidual;
  const below = sensor.bottomResidual + leads.ground;
  const signal = sensor.contact + leads.signal;
  const upward = 1 / load.pullUp.ohms;
  const conductance = 1 / load.pullDown + upward;
  const loadOhms = 1 / conductance;
  const loadVolts = load.pullUp.volts * (upward / conductance);
  const branch = signal + loadOhms;
  for (let i = 0; i < points; i++) {
    const x = i / (points - 1);
    travel[i] = x;
    const up = above + (1 - x) * track;
    const down = below + x * track;
    const atContact =
      (volts * down * branch + loadVolts * up * down) / (down * branch + up * branch + up * down);
    out[i] = (atContact * loadOhms + loadVolts * signal) / branch;
  }
  return { travel, out };
}

/** A conductance matrix has no room for the 0 Ω of the track at its ends. */
const least = 1e-6;

/** The parts from the source's plus round to its minus, and from the contact through the load: node by node. */
function denseSolve(x: number): number {
  const ladder = [
    source.ohms,
    limiter,
    leads.supply,
    sensor.topResidual,
    (1 - x) * sensor.track || least,
  ];
  const lower = [x * sensor.track || least, sensor.bottomResidual, leads.ground];
  const contactNode = ladder.length;
  const wiperNode = contactNode + lower.length;
  const signalNode = wiperNode + 1;
  const size = signalNode + 2;
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  const part = (a: number, b: number, ohms: number) => {
    const conductance = 1 / ohms;
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      if (one < 0) continue;
      matrix[one]![one]! += conductance;
      if (other >= 0) matrix[one]![other]! -= conductance;
    }
  };
  for (const [i, ohms] of ladder.entries()) part(i, i + 1, ohms);
  for (const [i, ohms] of lower.entries())
    part(contactNode + i, i === lower.length - 1 ? -1 : contactNode + i + 1, ohms);
  part(contactNode, wiperNode, sensor.contact);
  part(wiperNode, signalNode, leads.signal);
  part(signalNode, -1, load.pullDown);
  part(signalNode, -1, load.pullUp.ohms);
  right[signalNode] = load.pullUp.volts / load.pullUp.ohms;
  matrix[size - 1]![0] = 1;
  matrix[0]![size - 1] = 1;
  right[size - 1] = source.volts;
  return (lusolve(matrix, right) as unknown as number[][])[signalNode]![0]!;
}

function denseCurve() {
  return Float64Array.from({ length: points }, (_, i) => denseSolve(i / (points - 1)));
}

test('a curve of 1,000 points', async ({ bench, expect }) => {
  const curve = expectedCurve(circuit, points);
  expect(bareLoop(circuit).out).toEqual(curve.volts);
  for (const [i, dense] of denseCurve().entries()) expect(dense).toBeCloseTo(curve.volts[i]!, 6);
  const timed = await bench.compare(
    bench('expectedCurve', () => {
      expectedCurve(circuit, points);
    }),
    bench('bare loop', () => {
      bareLoop(circuit);
    }),
    bench('dense solve by mathjs', () => {
      denseCurve();
    }),
  );
  keepsRatio(timed.get('expectedCurve'), timed.get('bare loop'), {
    side: 'most',
    goal: 1.5,
    holds: 1.5,
  });
  keepsRatio(timed.get('dense solve by mathjs'), timed.get('expectedCurve'), {
    side: 'least',
    goal: 1000,
    holds: 1000,
  });
});
