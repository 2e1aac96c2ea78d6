import type { ReadingLimits } from '@truesweep/core/twoState';
import { stateLabels, stateWords, twoStateAdvice, twoStateUnsaid } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { quantityText } from '../forms/quantityText.js';
import { JudgedTables } from './JudgedTables.js';
import { judgedSentences } from './judgedSentences.js';
import { type JudgedStates, twoStates, twoStatesForm } from './twoStates.js';

/** The calculator: what a sensor of two states reads in each in; the verdict with its reasons out. */
export function TwoStates({ keeping }: CalculatorProps) {
  return <Calculator form={twoStatesForm} show={show} workings={workings} keeping={keeping} />;
}

const own = { advice: twoStateAdvice, unsaid: twoStateUnsaid };

const workings = () => import('../workings/twoStates.js');

function show(values: Parameters<typeof twoStates>[0]): ShownResult {
  const judgedStates = twoStates(values);
  const { judgement, readings } = judgedStates;
  const judged = { kind: 'two-state', judgement, readings } as const;
  return {
    sentences: judgedSentences(judged, own),
    below: <JudgedTables judged={judged} sentences={own} />,
    sheet: sheetOf(judgedStates),
  };
}

function sheetOf({
  unit,
  rest,
  operated,
  latched,
  bothWays,
}: JudgedStates): NonNullable<ShownResult['sheet']> {
  const text = ({ low, high }: ReadingLimits): string => {
    if (low === undefined) return stateWords.atMost(quantityText(high ?? 0, unit));
    if (high === undefined) return stateWords.atLeast(quantityText(low, unit));
    return stateWords.between(quantityText(low, unit), quantityText(high, unit));
  };
  return [
    [stateLabels.atRest, text(rest)],
    [stateLabels.operated, text(operated)],
    ...(bothWays ? [[stateLabels.otherWay, text(operated)] as const] : []),
    [stateLabels.backAtRest, text(latched ? operated : rest)],
    ...(latched ? [[stateLabels.keyCycled, text(rest)] as const] : []),
  ];
}
