import type { Indeterminate, NodeName, OperatingPoint, PartName } from '@truesweep/core';

/**
 * The parts of the circuit, as its drawing names them.
 *
 * @example
 * partLabels.limiter // => 'Limiting resistor'
 */
export const partLabels: Readonly<Record<PartName, string>> = {
  source: 'Source',
  sourceResistance: "Source's internal resistance",
  limiter: 'Limiting resistor',
  supplyLead: 'Supply lead',
  topTerminal: 'Resistor built into the top terminal',
  topResidual: 'Top end residual',
  trackAbove: 'Track above the wiper',
  trackBelow: 'Track below the wiper',
  bottomResidual: 'Bottom end residual',
  bottomTerminal: 'Resistor built into the bottom terminal',
  groundLead: 'Ground lead',
  contact: "Wiper's contact",
  wiperTerminal: 'Resistor built into the wiper terminal',
  signalLead: 'Signal lead',
  pullDown: 'Pull-down',
  pullUp: 'Pull-up',
  pullUpSource: "Pull-up's source",
};

/**
 * The nodes of the circuit, as its drawing names them.
 *
 * @example
 * nodeLabels.top // => 'Top terminal'
 */
export const nodeLabels: Readonly<Record<NodeName, string>> = {
  common: 'Common',
  sourceInside: 'Source before its internal resistance',
  sourcePlus: "Source's plus",
  limited: 'After the limiting resistor',
  top: 'Top terminal',
  topInside: 'Behind the resistor of the top terminal',
  trackTop: 'Top end of the track',
  track: 'Track under the wiper',
  trackBottom: 'Bottom end of the track',
  bottomInside: 'Behind the resistor of the bottom terminal',
  bottom: 'Bottom terminal',
  wiperInside: 'Behind the resistor of the wiper terminal',
  wiper: 'Wiper terminal',
  signal: 'Signal at the instrument',
  pullUpFeed: "Pull-up's feed",
};

/**
 * What the source does.
 *
 * @example
 * sourceStateLabels['constant-voltage'] // => 'The source holds its voltage.'
 */
export const sourceStateLabels: Readonly<Record<OperatingPoint['sourceState'], string>> = {
  'constant-voltage': 'The source holds its voltage.',
  'constant-current': 'The source stands at its current limit.',
};

/**
 * Why a quantity of a circuit has no single finite value.
 *
 * @example
 * indeterminateReasons['no-path-to-common'] // => 'Nothing ties this point to common; its voltage floats.'
 */
export const indeterminateReasons: Readonly<Record<Indeterminate['reason'], string>> = {
  'sources-joined-without-resistance':
    'Two sources are joined without any resistance; the current has no limit.',
  'circuit-without-solution': 'Another part of the circuit has no solution, so this has none.',
  'shared-between-zero-ohm-paths':
    'Paths of 0 Ω lie side by side; how they share the current is open.',
  'no-path-to-common': 'Nothing ties this point to common; its voltage floats.',
};
