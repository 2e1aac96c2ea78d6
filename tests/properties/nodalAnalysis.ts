import type { Circuit, NodeName, PartName } from '@truesweep/core';
import { all, type BigNumber, create } from 'mathjs';

/** The tolerances keep mathjs from taking small numbers for zero in its pivots. */
const math = create(all!, { number: 'BigNumber', precision: 64, relTol: 1e-60, absTol: 1e-300 });

/** The binary value itself; mathjs would take the shortest decimal that reads back as it. */
function big(value: number): BigNumber {
  let halvings = 0;
  let whole = value;
  for (; !Number.isInteger(whole); whole *= 2) halvings++;
  return math.bignumber(BigInt(whole).toString()).div(math.bignumber(2).pow(halvings));
}

interface Branch {
  readonly name: PartName;
  readonly from: NodeName;
  readonly to: NodeName;
  readonly ohms: BigNumber | undefined;
  readonly volts: BigNumber | undefined;
}

export interface NodalSolution {
  readonly volts: ReadonlyMap<NodeName, BigNumber>;
  readonly amps: ReadonlyMap<PartName, BigNumber>;
}

/**
 * Modified nodal analysis (Ho, Ruehli and Brennan, IEEE Trans. Circuits and Systems 22, 1975; from
 * memory) in 64-digit arithmetic, straight from the description of the circuit and independent of the
 * code under test: a row for each node, a branch-current row for each source and each 0 Ω, nothing for ∞.
 * Nodes without a path to common are left out.
 */
export function nodalAnalysis(circuit: Circuit, position: number): NodalSolution {
  const branches = branchesOf(circuit, position);
  const nodes = reachable(branches);
  const used = branches.filter(({ from }) => from === 'common' || nodes.includes(from));
  const withCurrent = used.filter(({ ohms, volts }) => volts || ohms?.isZero());
  const size = nodes.length + withCurrent.length;
  const matrix = Array.from({ length: size }, () => Array.from({ length: size }, () => big(0)));
  const right = Array.from({ length: size }, () => big(0));
  const add = (row: number, column: number, value: BigNumber): void => {
    if (row < 0 || column < 0) return;
    matrix[row]![column] = math.add(matrix[row]![column]!, value);
  };
  for (const { from, to, ohms, volts } of used) {
    if (volts || !ohms || ohms.isZero()) continue;
    const conductance = math.divide(big(1), ohms) as BigNumber;
    const [a, b] = [nodes.indexOf(from), nodes.indexOf(to)];
    add(a, a, conductance);
    add(b, b, conductance);
    add(a, b, conductance.negated());
    add(b, a, conductance.negated());
  }
  withCurrent.forEach(({ from, to, volts }, i) => {
    const row = nodes.length + i;
    const [a, b] = [nodes.indexOf(from), nodes.indexOf(to)];
    add(a, row, big(1));
    add(b, row, big(-1));
    add(row, b, big(1));
    add(row, a, big(-1));
    if (volts) right[row] = volts;
  });
  const solution = (math.lusolve(matrix, right) as unknown as BigNumber[][]).map(([x]) =>
    math.bignumber(x!),
  );
  const volts = new Map<NodeName, BigNumber>([['common', big(0)]]);
  for (const [i, node] of nodes.entries()) volts.set(node, solution[i]!);
  const amps = new Map<PartName, BigNumber>();
  for (const { name, from, to, ohms } of used) {
    const row = withCurrent.findIndex((branch) => branch.name === name);
    if (row >= 0) amps.set(name, solution[nodes.length + row]!);
    else if (ohms) amps.set(name, volts.get(from)!.minus(volts.get(to)!).div(ohms));
  }
  return { volts, amps };
}

function branchesOf(circuit: Circuit, position: number): readonly Branch[] {
  const { source, limiter, leads, sensor, load } = circuit;
  const list: Branch[] = [];
  const resistor = (
    name: PartName,
    from: NodeName,
    to: NodeName,
    ohms: number,
    fraction = big(1),
  ) => {
    if (ohms === Number.POSITIVE_INFINITY && !fraction.isZero()) return;
    const product = fraction.isZero() ? big(0) : big(ohms).times(fraction);
    list.push({ name, from, to, ohms: product, volts: undefined });
  };
  const below = big(position);
  list.push({
    name: 'source',
    from: 'common',
    to: 'sourceInside',
    ohms: undefined,
    volts: big(source.volts),
  });
  resistor('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms ?? 0);
  resistor('limiter', 'sourcePlus', 'limited', limiter);
  resistor('supplyLead', 'limited', 'top', leads?.supply ?? 0);
  resistor('topResidual', 'top', 'trackTop', sensor.topResidual ?? 0);
  resistor('trackAbove', 'trackTop', 'track', sensor.track, big(1).minus(below));
  resistor('trackBelow', 'track', 'trackBottom', sensor.track, below);
  resistor('bottomResidual', 'trackBottom', 'bottom', sensor.bottomResidual ?? 0);
  resistor('groundLead', 'bottom', 'common', leads?.ground ?? 0);
  resistor('contact', 'track', 'wiper', sensor.contact ?? 0);
  resistor('signalLead', 'wiper', 'signal', leads?.signal ?? 0);
  if (load.pullDown !== undefined) resistor('pullDown', 'signal', 'common', load.pullDown);
  if (load.pullUp) {
    const { ohms, volts } = load.pullUp;
    list.push({
      name: 'pullUpSource',
      from: 'common',
      to: 'pullUpFeed',
      ohms: undefined,
      volts: big(volts),
    });
    resistor('pullUp', 'pullUpFeed', 'signal', ohms);
  }
  return list;
}

function reachable(branches: readonly Branch[]): readonly NodeName[] {
  const found = new Set<NodeName>(['common']);
  for (let before = 0; before !== found.size; ) {
    before = found.size;
    for (const { from, to } of branches) {
      if (found.has(from)) found.add(to);
      if (found.has(to)) found.add(from);
    }
  }
  found.delete('common');
  return [...found];
}
