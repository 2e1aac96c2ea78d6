import { type Circuit, expectedCurve } from '@truesweep/core';
import { lusolve } from 'mathjs';
import { test } from 'vitest';
import { printRatio } from './printRatio.js';

const points = 1000;
const [volts, sourceOhms, limiter, supplyLead, groundLead, signalLead] = [
  5, 0.1, 1000, 0.2, 0.3, 0.4,
];
const [track, topResidual, bottomResidual, contact, pullDown] = [5000, 20, 30, 50, 10e6];

const circuit: Circuit = {
  source: { volts, ohms: sourceOhms },
  limiter,
  leads: { supply: supplyLead, ground: groundLead, signal: signalLead },
  sensor: { track, bottomResidual, topResidual, contact },
  load: { pullDown },
};

/** Millman's theorem at the contact, written out by hand for this one circuit. */
function bareLoop() {
  const travel = new Float64Array(points);
  const out = new Float64Array(points);
  const above = sourceOhms + limiter + supplyLead + topResidual;
  const below = bottomResidual + groundLead;
  const branch = contact + signalLead + pullDown;
  for (let i = 0; i < points; i++) {
    const x = i / (points - 1);
    travel[i] = x;
    const up = above + (1 - x) * track;
    const down = below + x * track;
    const atContact = (volts * down * branch) / (down * branch + up * branch + up * down);
    out[i] = (atContact * pullDown) / branch;
  }
  return { travel, out };
}

/** A conductance matrix has no room for the 0 Ω of the track at its ends. */
const least = 1e-6;

/** The parts from the source's plus round to its minus, and from the contact through the load: node by node. */
function denseSolve(x: number): number {
  const ladder = [sourceOhms, limiter, supplyLead, topResidual, (1 - x) * track || least];
  const lower = [x * track || least, bottomResidual, groundLead];
  const side = [contact, signalLead, pullDown];
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
  part(contactNode, wiperNode, side[0]!);
  part(wiperNode, signalNode, side[1]!);
  part(signalNode, -1, side[2]!);
  matrix[size - 1]![0] = 1;
  matrix[0]![size - 1] = 1;
  right[size - 1] = volts;
  return (lusolve(matrix, right) as unknown as number[][])[signalNode]![0]!;
}

function denseCurve() {
  return Float64Array.from({ length: points }, (_, i) => denseSolve(i / (points - 1)));
}

test('a curve of 1,000 points', async ({ bench, expect }) => {
  const curve = expectedCurve(circuit, points);
  expect(bareLoop().out).toEqual(curve.volts);
  for (const [i, dense] of denseCurve().entries()) expect(dense).toBeCloseTo(curve.volts[i]!, 6);
  const timed = await bench.compare(
    bench('expectedCurve', () => {
      expectedCurve(circuit, points);
    }),
    bench('bare loop', () => {
      bareLoop();
    }),
    bench('dense solve by mathjs', () => {
      denseCurve();
    }),
  );
  printRatio(timed.get('expectedCurve'), timed.get('bare loop'), 'at most 1.5');
  printRatio(timed.get('dense solve by mathjs'), timed.get('expectedCurve'), 'at least 1,000');
});
