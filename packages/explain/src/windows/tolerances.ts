import type { Circuit, Tolerances } from '@truesweep/core';
import type { circuitWorkingWords } from '@truesweep/wording/working';
import { refuseWorking } from '../refuseWorking.js';

/** A part with a tolerance: its name there, its symbol in a working, and its nominal value in a circuit. */
export interface TolerantPart {
  readonly name: Exclude<keyof Tolerances, 'closedPosition' | 'openPosition'>;
  readonly symbol: keyof typeof circuitWorkingWords.given;
  readonly unit: 'V' | 'Ω';
  readonly value: (circuit: Circuit) => number | undefined;
  readonly withValue: (circuit: Circuit, value: number) => Circuit;
}

const sensorPart = (
  name: 'bottomResidual' | 'topResidual' | 'contact' | 'track',
  symbol: TolerantPart['symbol'],
): TolerantPart => ({
  name,
  symbol,
  unit: 'Ω',
  value: ({ sensor }) => sensor[name],
  withValue: (circuit, ohms) => ({ ...circuit, sensor: { ...circuit.sensor, [name]: ohms } }),
});

const pullUp = (circuit: Circuit) =>
  circuit.load.pullUp as { readonly ohms: number; readonly volts: number };

const parts: readonly TolerantPart[] = [
  {
    name: 'source',
    symbol: 'E',
    unit: 'V',
    value: ({ source }) => source.volts,
    withValue: (circuit, volts) => ({ ...circuit, source: { ...circuit.source, volts } }),
  },
  {
    name: 'limiter',
    symbol: 'R_s',
    unit: 'Ω',
    value: ({ limiter }) => limiter,
    withValue: (circuit, limiter) => ({ ...circuit, limiter }),
  },
  sensorPart('track', 'R_t'),
  sensorPart('bottomResidual', 'R_bot'),
  sensorPart('topResidual', 'R_top'),
  sensorPart('contact', 'R_c'),
  {
    name: 'pullDown',
    symbol: 'R_L',
    unit: 'Ω',
    value: ({ load }) => load.pullDown,
    withValue: (circuit, pullDown) => ({ ...circuit, load: { ...circuit.load, pullDown } }),
  },
  {
    name: 'pullUp',
    symbol: 'R_pu',
    unit: 'Ω',
    value: ({ load }) => load.pullUp?.ohms,
    withValue: (circuit, ohms) => ({
      ...circuit,
      load: { ...circuit.load, pullUp: { ...pullUp(circuit), ohms } },
    }),
  },
  {
    name: 'pullUpVolts',
    symbol: 'U_pu',
    unit: 'V',
    value: (circuit) => circuit.load.pullUp && pullUp(circuit).volts,
    withValue: (circuit, volts) => ({
      ...circuit,
      load: { ...circuit.load, pullUp: { ...pullUp(circuit), volts } },
    }),
  },
];

const hasLoad = ({ load: { pullDown = Infinity, pullUp } }: Circuit): boolean =>
  pullDown < Infinity || (pullUp?.ohms ?? Infinity) < Infinity;

/** Refuses a pull-up at the source's plus: the source's tolerance is in its voltage too. */
export function checkOwnPullUp({ load }: Circuit): void {
  if (load.pullUp && 'from' in load.pullUp)
    refuseWorking('circuit.load.pullUp.from', 'is given beside tolerances');
}

/** The parts of a circuit that are there and have a tolerance above 0. */
export function tolerantParts(
  circuit: Circuit,
  tolerances: Tolerances,
): readonly (TolerantPart & { readonly tolerance: number })[] {
  return parts.flatMap((part) => {
    const tolerance = tolerances[part.name] ?? 0;
    const value = part.value(circuit) ?? 0;
    // Without a load nothing flows through the contact.
    const isIdle = part.name === 'contact' && !hasLoad(circuit);
    const counts = value > 0 && value < Infinity && tolerance > 0 && !isIdle;
    return counts ? [{ ...part, tolerance }] : [];
  });
}

const ofPart = (letter: string, symbol: string): string => `${letter}_${symbol.replace('_', '')}`;

/** The symbol of a part's tolerance. */
export const toleranceOf = (symbol: string): string => ofPart('t', symbol);

/** The symbol of what a part's tolerance adds to the uncertainty. */
export const addedBy = (symbol: string): string => ofPart('u', symbol);

/** The symbol of a stop's share in the wiper's place. */
export const shareOf = (symbol: string): string => ofPart('s', symbol);
