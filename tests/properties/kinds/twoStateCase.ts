import { type Draws, drawsOf } from './random.js';
import { outsideBy, stateOf, type Truth } from './truth.js';

type Window = { readonly low?: number; readonly high?: number };
type State = 'rest' | 'operated' | 'operated-other-way' | 'back-at-rest' | 'key-cycled';

interface Kind {
  readonly kind: 'volts' | 'ratio' | 'ohms';
  readonly rest: Window;
  readonly operated: Window;
}

/** A sensor of two states on a bench as it is played here. It knows nothing of how it will be judged. */
export interface TwoStateCase extends Truth {
  readonly sensor: Kind & {
    readonly latched: boolean;
    readonly bothWays: boolean;
    readonly changesBetween?: { readonly low: number; readonly high: number };
  };
  readonly readings: readonly {
    readonly state: State;
    readonly value: number;
    readonly uncertainty: number;
    readonly supply?: number;
    readonly supplyUncertainty?: number;
    readonly leads?: number;
    readonly changedAt?: number;
    readonly angleUncertainty?: number;
  }[];
}

const kinds: readonly Kind[] = [
  { kind: 'volts', rest: { low: 0.4, high: 1.4 }, operated: { low: 3.7, high: 4.4 } },
  { kind: 'volts', rest: { low: 4.2, high: 4.8 }, operated: { low: 0.2, high: 0.8 } },
  { kind: 'volts', rest: { low: 0, high: 1 }, operated: { low: 10.5 } },
  { kind: 'ratio', rest: { low: 0.1, high: 0.28 }, operated: { low: 0.72, high: 0.9 } },
  { kind: 'ohms', rest: { high: 0.5 }, operated: { low: 1e6 } },
  { kind: 'ohms', rest: { low: 55_000, high: 69_000 }, operated: { high: 500 } },
];

/** A level well within a window, spread as parts are. */
function levelIn(draws: Draws, { low, high }: Window): number {
  if (high === undefined) return low! < 100 ? low! + draws.between(0.5, 3) : Infinity;
  if (low === undefined) return high * draws.between(0.05, 0.9);
  return low + (high - low) * draws.between(0.05, 0.95);
}

/** A level that is neither state's: half way, or a contact that is neither closed nor open. */
function levelBetween(draws: Draws, { kind, rest, operated }: Kind): number {
  const ends = [rest.high ?? Infinity, operated.high ?? Infinity].sort((a, b) => a - b);
  const from = ends[0]!;
  const to = rest.high === from ? operated.low! : rest.low!;
  return kind === 'ohms' ? draws.log(from, to) : draws.between(from, to);
}

const faults = [
  'stuck-at-rest',
  'stuck-operated',
  'one-way-only',
  'no-latch',
  'never-released',
  'level-between',
  'angle',
] as const;

export function twoStateCase(seed: number): TwoStateCase {
  const draws = drawsOf(seed);
  const kind = draws.oneOf(kinds);
  const isLean = kind.kind !== 'ohms';
  const [latched, bothWays] = [isLean && draws.chance(0.6), isLean && draws.chance(0.7)];
  const changesBetween = isLean && draws.chance(0.5) ? { low: 55, high: 70 } : undefined;
  const fault = draws.chance(0.5) ? undefined : draws.oneOf(faults);
  const meter = kind.kind === 'ohms' ? 0.005 : draws.oneOf([0.005, 0.01, 0.02, 0.03]);
  const [atRest, operated] = [levelIn(draws, kind.rest), levelIn(draws, kind.operated)];
  const between = levelBetween(draws, kind);
  const badState = draws.oneOf(['rest', 'operated'] as const);
  const angle = fault === 'angle' ? draws.oneOf([40, 48, 77, 85]) : draws.between(56, 69);
  const angleUncertainty = draws.oneOf([0.5, 1]);
  const asked: readonly State[] = [
    'rest',
    'operated',
    ...(bothWays ? (['operated-other-way'] as const) : []),
    'back-at-rest',
    ...(latched ? (['key-cycled'] as const) : []),
  ];
  const isTilted = (state: State) => state === 'operated' || state === 'operated-other-way';
  const wanted = (state: State) => isTilted(state) || (latched && state === 'back-at-rest');
  const isOn = (state: State): boolean => {
    if (fault === 'stuck-at-rest') return false;
    if (fault === 'stuck-operated') return true;
    if (fault === 'one-way-only' && state === 'operated-other-way') return false;
    if (fault === 'no-latch' && state === 'back-at-rest') return false;
    if (fault === 'never-released' && (state === 'back-at-rest' || state === 'key-cycled'))
      return true;
    return wanted(state);
  };
  const levelOf = (state: State): number => {
    const on = isOn(state);
    if (fault === 'level-between' && on === (badState === 'operated')) return between;
    return on ? operated : atRest;
  };
  const supplyUncertainty = 0.01;
  let outside = 0;
  const skips = draws.chance(0.15);
  const angleIsRead = draws.chance(0.9);
  const taken = skips ? asked.filter(() => draws.chance(0.7)) : asked;
  const readings = taken.map((state) => {
    const level = levelOf(state);
    const { low = -Infinity, high = Infinity } = wanted(state) ? kind.operated : kind.rest;
    const supply = kind.kind === 'ratio' ? draws.between(4.7, 5.2) : 1;
    const uncertainty = kind.kind === 'ohms' && level < Infinity ? 0.005 * level + 0.02 : meter;
    const total =
      Math.hypot(uncertainty, kind.kind === 'ratio' ? supplyUncertainty * level : 0) / supply;
    outside = Math.max(outside, outsideBy(level, low, high, total));
    const leads = draws.between(0.1, 0.2);
    const error = level < Infinity ? draws.normal(uncertainty) : 0;
    const value = level * supply + error + (kind.kind === 'ohms' ? leads : 0);
    const reads = changesBetween !== undefined && isTilted(state) && isOn(state) && angleIsRead;
    if (reads) outside = Math.max(outside, outsideBy(angle, 55, 70, angleUncertainty));
    return {
      state,
      value: kind.kind === 'ohms' ? Math.max(0, value) : value,
      uncertainty,
      ...(kind.kind === 'ratio' && {
        supply: supply + draws.normal(supplyUncertainty),
        supplyUncertainty,
      }),
      ...(kind.kind === 'ohms' && { leads }),
      ...(reads && { changedAt: angle + draws.normal(angleUncertainty), angleUncertainty }),
    };
  });
  const hasAngle = !changesBetween || readings.some(({ changedAt }) => changedAt !== undefined);
  return {
    state: stateOf(outside),
    adequate: taken.length === asked.length && hasAngle,
    sensor: { ...kind, latched, bothWays, ...(changesBetween && { changesBetween }) },
    readings,
  };
}
