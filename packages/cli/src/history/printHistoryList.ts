import {
  changedSensorsSentence,
  dateText,
  historyQuantityNames,
  historyWords,
  verdictLabels,
} from '@truesweep/wording';
import { printTheseCautions } from '../printCautions.js';
import type { ListedSensor } from '../printedData.js';
import { paragraph, type TextPart, table } from '../textPart.js';

/** The sensors of a history: a row each, those with a change first. */
export function printHistoryList(sensors: readonly ListedSensor[]): readonly TextPart[] {
  if (sensors.length === 0) return [historyWords.noRecords];
  const isChanged = ({ changed }: ListedSensor) => changed.length > 0;
  const sorted = [...sensors.filter(isChanged), ...sensors.filter((one) => !isChanged(one))];
  const head = ['sensor', 'records', 'from', 'to', 'verdict', 'changes'] as const;
  return [
    table(
      head.map((name) => historyWords[name]),
      sorted.map(({ sensor, records, from, to, verdict, changed }) => [
        sensor,
        String(records),
        from === undefined ? historyWords.noDate : dateText(from),
        to === undefined ? '' : dateText(to),
        verdictLabels[verdict],
        changed.map((one) => historyQuantityNames[one]).join(', ') || historyWords.none,
      ]),
      ['left', 'right', 'left', 'left', 'left', 'left'],
    ),
    '',
    paragraph(changedSensorsSentence(sensors.length, sensors.filter(isChanged).length)),
    paragraph(historyWords.howTold),
    paragraph(historyWords.noVerdict),
    '',
    ...printTheseCautions([]),
  ];
}
