import { formatQuantity } from '@truesweep/core';
import type { ColumnRole, DelimitedReading } from '@truesweep/recordings';
import {
  columnSentence,
  delimiterLabels,
  encodingLabels,
  readingSentence,
  sampleRateSentence,
  unitText,
} from '@truesweep/wording';

/** How a file was read, as a sentence. */
export function howRead(reading: DelimitedReading): string {
  const { columns, sampleRate } = reading;
  const described = (role: ColumnRole): string | undefined => {
    const column = columns[role];
    if (!column) return undefined;
    const { index, name, chosenFrom } = column;
    const shared = { number: index + 1, name, chosenFrom };
    if (!('unit' in column)) return columnSentence(shared);
    const { unit, unitFrom, voltsPerUnit } = column;
    const scale = voltsPerUnit === undefined ? undefined : formatQuantity(voltsPerUnit, 'V');
    return columnSentence({ ...shared, unit: unitText(unit, scale), unitFrom });
  };
  const [supply, second, position] = (['supply', 'second', 'position'] as const).map(described);
  return readingSentence({
    time: sampleRate
      ? sampleRateSentence(formatQuantity(sampleRate.hertz, 'Hz'), sampleRate.from)
      : (described('time') ?? ''),
    signal: described('signal') ?? '',
    ...(supply && { supply }),
    ...(second && { second }),
    ...(position && { position }),
    rows: String(reading.rows),
    withoutReading: reading.withoutReading,
    repeatedHeadings: reading.repeatedHeadings,
    footerLines: reading.footerLines,
    delimiter: delimiterLabels[reading.delimiter],
    encoding: encodingLabels[reading.encoding],
  });
}
