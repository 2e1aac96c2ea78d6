import type { RefitCheck } from '@truesweep/core';
import {
  boundsWords,
  type RefitAnswer,
  refitAnswers,
  refitCheckLabels,
  refitOutcomeLabels,
  wayWords,
} from '@truesweep/wording';
import { useMemo } from 'preact/hooks';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { type RefitTicks, refit, refitForm } from './refit.js';
import { Ticks } from './Ticks.js';

const asks = ['closedLow', 'closedHigh', 'statedReference', 'coldReading', 'coldReference'];

/** The last step: readings at the connector and ticks in; each check after refitting with its outcome, out. */
export function Refit(
  props: CalculatorProps & {
    readonly done: readonly string[];
    readonly onTick: (answer: RefitAnswer, isDone: boolean) => void;
  },
) {
  const { keeping, done, onTick } = props;
  const [asksRelearn, relearned, snapsShut] = (
    ['asksRelearn', 'relearned', 'snapsShut'] as const
  ).map((answer) => done.includes(answer)) as [boolean, boolean, boolean];
  const show = useMemo(() => {
    const ticks: RefitTicks = { asksRelearn, relearned, snapsShut };
    return (values: Parameters<typeof refit>[0]) => shown(refit(values, ticks));
  }, [asksRelearn, relearned, snapsShut]);
  return (
    <>
      <Ticks legend={wayWords.checks} labels={refitAnswers} done={done} onTick={onTick} />
      <Calculator form={refitForm} show={show} keeping={keeping} asks={asks} />
    </>
  );
}

function shown(checks: readonly RefitCheck[] | undefined): ShownResult {
  if (!checks) return { sentences: [wayWords.noWindow] };
  const outcomes = checks.map(({ outcome }) => outcome);
  const { allMet, notMet, toDo } = wayWords;
  return {
    sentences: [outcomes.includes('not-met') ? notMet : outcomes.includes('to-do') ? toDo : allMet],
    table: (
      <DataTable
        id="refit"
        caption={wayWords.checks}
        head={[wayWords.check, wayWords.limits, wayWords.measured, wayWords.outcome]}
        rows={checks.map(row)}
      />
    ),
  };
}

function row(check: RefitCheck): readonly string[] {
  const hasLimits = check.code === 'closed-ratio' || check.code === 'closed-ratio-warm';
  return [
    refitCheckLabels[check.code],
    hasLimits ? boundsWords(quantityText(check.low, '%'), quantityText(check.high, '%')) : '–',
    hasLimits && check.measured !== undefined ? quantityText(check.measured, '%') : '–',
    refitOutcomeLabels[check.outcome],
  ];
}
