import type { Verdict } from '@truesweep/core';
import { clopperPearson } from '../clopperPearson.js';
import { kinds, type Rate, type Table } from '../measure.js';
import type { JudgedWorldCase } from './judgeWorldCase.js';

/** A measured figure, by a name that stays. */
export interface Figure {
  readonly name: string;
  /** Left out where there was nothing to measure. */
  readonly value?: number;
  /** What it counts. */
  readonly rate?: Rate;
  /** One-sided 95 % bounds of the share. */
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** How many were wrong of those for which a factor was so. */
export interface FactorRow extends Rate {
  readonly factor: string;
}

export interface MeasuredWorld {
  readonly cases: number;
  readonly figures: readonly Figure[];
  /** Kinds: truth down, reported across. */
  readonly kindTable: Table;
  /** Cases with a wrong verdict or cause by what was varied, by the least that the share may be, the worst first. */
  readonly factors: readonly FactorRow[];
  /** Events that were missed or named wrong, by what they were, the worst first. */
  readonly missed: readonly FactorRow[];
}

/** All figures over a set of judged cases of a world. */
export function measureWorld(cases: readonly JudgedWorldCase[]): MeasuredWorld {
  const sound = cases.filter(({ played }) => played.sound);
  const events = cases.flatMap((one) => one.events);
  const findings = cases.flatMap((one) => one.findings).filter(({ match }) => match !== 'open');
  const errors = events.flatMap(({ travelError }) => travelError ?? []).sort((a, b) => a - b);
  const isFair = ({ played }: JudgedWorldCase, verdict: Verdict): boolean =>
    played.verdicts.includes(verdict);
  const unfairly = (one: JudgedWorldCase, ...said: readonly Verdict[]): boolean =>
    said.some((verdict) => one.verdict === verdict && !isFair(one, verdict));
  const visible = cases.filter(
    (one) =>
      !one.played.sound && !isFair(one, 'pass') && (isFair(one, 'fail') || isFair(one, 'marginal')),
  );
  const onlyFail = cases.filter(({ played }) => played.verdicts.every((one) => one === 'fail'));
  const adequate = sound.filter(({ played }) => played.adequate === true);
  const figures = [
    figure('verdict right', cases, (one) => one.verdictRight),
    figure('sound judged fail', sound, (one) => unfairly(one, 'fail')),
    figure('sound judged fail or marginal', sound, (one) => unfairly(one, 'fail', 'marginal')),
    figure('visible fault passed', visible, ({ verdict }) => verdict === 'pass'),
    figure('not fail where only fail is fair', onlyFail, ({ verdict }) => verdict !== 'fail'),
    figure('sound, adequate, judged inconclusive', adequate, (one) =>
      unfairly(one, 'inconclusive'),
    ),
    figure(
      'cause right',
      cases.flatMap(({ cause }) => cause ?? []),
      ({ right }) => right,
    ),
    ...kinds.map((kind) =>
      figure(
        `recall of ${kind}`,
        events.filter(({ event }) => event.kinds[0] === kind),
        ({ found }) => found,
      ),
    ),
    ...kinds.map((kind) =>
      figure(
        `precision of ${kind}`,
        findings.filter(({ finding }) => finding.kind === kind),
        ({ match }) => match === 'right',
      ),
    ),
    shareFigure('bounces named a fault', {
      hits: cases.reduce((sum, { bounces }) => sum + bounces.named, 0),
      of: cases.reduce((sum, { bounces }) => sum + bounces.all, 0),
    }),
    quantileFigure('median travel error', errors, 0.5),
    quantileFigure('95th percentile of travel error', errors, 0.95),
  ];
  return {
    cases: cases.length,
    figures,
    kindTable: kindTable(events, findings),
    factors: worstFirst(
      cases.flatMap(({ played, verdictRight, cause }) => {
        const { family, factors } = played;
        const isWrong = !verdictRight || cause?.right === false;
        const named = Object.entries({ family, ...factors });
        return named.map(([name, value]) => ({ factor: `${name}: ${value}`, isWrong }));
      }),
    ),
    missed: worstFirst(
      cases.flatMap(({ played, events }) =>
        events.flatMap(({ event, found }) => {
          const { kinds, fast, ratio } = event;
          const capture = played.adequate === false ? 'a poor' : 'a fair';
          const size = ratio < 2 ? '1.4 to 2' : ratio < 5 ? '2 to 5' : '5 and more';
          return [
            `${kinds[0]}, ${fast ? 'within a fall' : 'at leisure'}`,
            `in ${capture} recording`,
            `ratio ${size}`,
          ].map((factor) => ({ factor, isWrong: !found }));
        }),
      ),
    ),
  };
}

function figure<T>(name: string, items: readonly T[], hit: (item: T) => boolean): Figure {
  return shareFigure(name, { hits: items.filter(hit).length, of: items.length });
}

function quantileFigure(name: string, sorted: readonly number[], part: number): Figure {
  const value = sorted[Math.floor(sorted.length * part)];
  return { name, ...(value !== undefined && { value }) };
}

function shareFigure(name: string, rate: Rate): Figure {
  const { hits, of } = rate;
  return {
    name,
    rate,
    ...(of > 0 && { value: hits / of }),
    atLeast: clopperPearson('lower', hits, of),
    atMost: clopperPearson('upper', hits, of),
  };
}

function kindTable(
  events: readonly JudgedWorldCase['events'][number][],
  findings: readonly JudgedWorldCase['findings'][number][],
): Table {
  const table: Record<string, Record<string, number>> = {};
  const add = (row: string, column: string): void => {
    table[row] ??= {};
    table[row][column] = (table[row][column] ?? 0) + 1;
  };
  for (const { event, found, reported } of events)
    add(event.kinds[0]!, found ? event.kinds[0]! : (reported ?? 'missed'));
  for (const { finding, match } of findings) if (match === 'false') add('nothing', finding.kind);
  return table;
}

function worstFirst(
  rows: readonly { readonly factor: string; readonly isWrong: boolean }[],
): readonly FactorRow[] {
  const counted = new Map<string, { hits: number; of: number }>();
  for (const { factor, isWrong } of rows) {
    const count = counted.get(factor) ?? { hits: 0, of: 0 };
    counted.set(factor, { hits: count.hits + Number(isWrong), of: count.of + 1 });
  }
  const surely = ({ hits, of }: Rate): number => clopperPearson('lower', hits, of);
  return [...counted]
    .map(([factor, count]) => ({ factor, ...count }))
    .sort((a, b) => surely(b) - surely(a) || b.of - a.of);
}
