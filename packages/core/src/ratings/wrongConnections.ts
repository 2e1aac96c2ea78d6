import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, type Connection, positionAt } from '../circuit/circuit.js';
import { type Determined, isDetermined } from '../circuit/determined.js';
import type { CircuitFault } from '../circuit/faults.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import type { Lead, Terminal } from '../circuit/terminals.js';
import { between } from '../guard.js';
import type { Volts } from '../units.js';
import { checkRatings, checkRatingValues, type RatingChecks } from './checkRatings.js';
import type { Ratings } from './ratings.js';

/** A mistake in the hook-up, or a failure of the sensor, that the table looks at. */
export type Mistake =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'exchanged-leads';
      /** Which lead sits on which terminal. */
      readonly connection: Connection;
    }
  | CircuitFault;

/** How a mistake shows on the instrument between the closed and the open stop. */
export type Appearance =
  | 'as-right'
  | 'other-readings'
  | 'reversed'
  | 'stays-near-common'
  | 'stays-near-source'
  | 'stays-between'
  | 'floats'
  | 'no-solution';

/** The readings of a mistake, and each part's worst case beside its rating. */
export interface MistakeEffect {
  /** The reading at the closed stop, V. */
  readonly closed: Determined<Volts>;
  /** The reading at the open stop, V. */
  readonly open: Determined<Volts>;
  /** What it looks like on the instrument, as a code. */
  readonly appearance: Appearance;
  /** Each part's worst case beside its rating. */
  readonly ratings: RatingChecks;
}

/** One mistake: on the planned bench, with the limiter forgotten, and on another source voltage. */
export interface WrongConnection {
  /** Which mistake. */
  readonly mistake: Mistake;
  /** On the planned bench. */
  readonly planned: MistakeEffect;
  /** With the limiter forgotten as well. */
  readonly withoutLimiter: MistakeEffect;
  /** On the other source voltage; left out where none was named. */
  readonly otherSource?: MistakeEffect;
}

/** The voltage of a source that gives some. */
export const someVolts = between(1e-6, 1e6, 'V');

/** A reading that changes by less than this fraction of the right span stays where it is. */
const stays = 0.02;

/**
 * What each wrong connection and each failure does to a bench: how it shows on the instrument and whether any
 * part is over its rating in the worst wiper position. The first row is the right connection.
 *
 * @param circuit The right hook-up; its own faults and connection are left out.
 * @param ratings What the parts may bear; what is not given is not judged.
 * @param otherSource Another source voltage to look at too, such as 12 V of a battery.
 * @throws InputError for a wrong circuit, rating or voltage.
 *
 * @example
 * const bench = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const rows = wrongConnections(bench, { wiper: { amps: 0.001, shortTerm: 0.01 } });
 * const tied = rows.find(({ mistake }) => mistake.kind === 'exchanged-leads' && mistake.connection.supply === 'wiper' && mistake.connection.ground === 'bottom');
 * tied.planned.ratings.wiper.value // => 0.005
 * tied.planned.ratings.wiper.outcome // => 'within-short-term'
 * tied.withoutLimiter.ratings.wiper.value.kind // => 'unbounded'
 */
export function wrongConnections(
  circuit: Circuit,
  ratings: Ratings = {},
  otherSource?: Volts,
): readonly WrongConnection[] {
  checkCircuit(circuit);
  checkRatingValues(ratings);
  if (otherSource !== undefined) someVolts(otherSource, 'otherSource');
  const { connection: _, faults: __, ...right } = circuit;
  return mistakes().map((mistake) => {
    const wrong = withMistake(right, mistake);
    const effect = (extra: readonly CircuitFault[]): MistakeEffect =>
      effectOf({ ...wrong, faults: [...extra, ...(wrong.faults ?? [])] }, right, ratings);
    return {
      mistake,
      planned: effect([]),
      withoutLimiter: effect([{ kind: 'no-limiter' }]),
      ...(otherSource !== undefined && {
        otherSource: effect([{ kind: 'wrong-source', volts: otherSource }]),
      }),
    };
  });
}

const leads: readonly Lead[] = ['supply', 'ground', 'signal'];
const terminals: readonly Terminal[] = ['top', 'bottom', 'wiper'];

/** The right connection first, then every exchange of leads, break, short and failure. */
export function mistakes(): readonly Mistake[] {
  const pairs = [
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const;
  return [
    { kind: 'none' },
    ...exchanges(),
    ...leads.map((lead) => ({ kind: 'broken-lead' as const, lead })),
    ...pairs.map(([a, b]) => ({
      kind: 'shorted-leads' as const,
      leads: [leads[a]!, leads[b]!] as const,
    })),
    ...(['source', 'supply', 'ground'] as const).map((to) => ({
      kind: 'shorted-signal' as const,
      to,
    })),
    { kind: 'reversed-source' },
    { kind: 'lifted-wiper' },
    { kind: 'broken-track', position: 0.5 },
    { kind: 'shorted-track', from: 0, to: 1 },
  ];
}

/** The five wrong ways to put three leads on three terminals. */
function exchanges(): readonly Mistake[] {
  return terminals.flatMap((supply) =>
    terminals
      .filter((ground) => ground !== supply)
      .map((ground) => ({
        supply,
        ground,
        signal: terminals.find((one) => one !== supply && one !== ground)!,
      }))
      .filter((connection) => connection.signal !== 'wiper' || connection.supply !== 'top')
      .map((connection) => ({ kind: 'exchanged-leads' as const, connection })),
  );
}

/** A right circuit with a mistake made. */
export function withMistake(circuit: Circuit, mistake: Mistake): Circuit {
  if (mistake.kind === 'none') return circuit;
  if (mistake.kind === 'exchanged-leads') return { ...circuit, connection: mistake.connection };
  return { ...circuit, faults: [mistake] };
}

function effectOf(wrong: Circuit, right: Circuit, ratings: Ratings): MistakeEffect {
  const [closed, open] = [0, 1].map((travel) => readingAt(wrong, travel)) as [
    Determined<Volts>,
    Determined<Volts>,
  ];
  return {
    closed,
    open,
    appearance: appearanceOf(closed, open, right),
    ratings: checkRatings(wrong, ratings),
  };
}

function readingAt(circuit: Circuit, travel: number): Determined<Volts> {
  return solveOperatingPoint(circuit, positionAt(circuit.sensor, travel)).output;
}

function appearanceOf(
  closed: Determined<Volts>,
  open: Determined<Volts>,
  right: Circuit,
): Appearance {
  if (!isDetermined(closed) || !isDetermined(open)) {
    const both = [closed, open].filter((value) => !isDetermined(value));
    return both.some((value) => typeof value === 'object' && value.kind === 'floating')
      ? 'floats'
      : 'no-solution';
  }
  const [rightClosed, rightOpen] = [readingAt(right, 0), readingAt(right, 1)];
  if (!isDetermined(rightClosed) || !isDetermined(rightOpen)) return 'other-readings';
  const span = rightOpen - rightClosed;
  const change = (open - closed) / span;
  if (Math.abs(change) < stays) return stayingAt(closed / right.source.volts);
  if (change < 0) return 'reversed';
  const near = (value: Volts, wanted: Volts) => Math.abs(value - wanted) < stays * Math.abs(span);
  return near(closed, rightClosed) && near(open, rightOpen) ? 'as-right' : 'other-readings';
}

function stayingAt(partOfSource: number): Appearance {
  if (Math.abs(partOfSource) < stays) return 'stays-near-common';
  return Math.abs(partOfSource - 1) < stays ? 'stays-near-source' : 'stays-between';
}
