import type { DelimitedReading } from '@truesweep/recordings';
import {
  columnSentence,
  delimiterLabels,
  encodingLabels,
  readingSentence,
  unitFromLabels,
} from '@truesweep/wording';

/** How a file was read, as a sentence. */
export function howRead({
  encoding,
  columns,
  delimiter,
  rows,
  withoutReading,
}: DelimitedReading): string {
  const described = (column: DelimitedReading['columns']['time' | 'signal']) =>
    columnSentence({
      number: column.index + 1,
      name: column.name,
      unit: column.unit,
      unitFrom: unitFromLabels[column.unitFrom],
    });
  return readingSentence({
    time: described(columns.time),
    signal: described(columns.signal),
    ...(columns.supply && { supply: described(columns.supply) }),
    rows: String(rows),
    withoutReading,
    delimiter: delimiterLabels[delimiter],
    encoding: encodingLabels[encoding],
  });
}
