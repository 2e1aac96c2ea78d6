import { formatQuantity } from '@truesweep/core';
import type { ColumnRole, DelimitedReading, SoundReading } from '@truesweep/recordings';
import {
  columnSentence,
  delimiterLabels,
  encodingLabels,
  readingSentence,
  sampleRateSentence,
  soundSentence,
  unitText,
} from './recordingSentences.js';
import { number, say } from './say.js';
import { whole } from './whole.js';
/**
 * How a file was read, as a sentence.
 *
 * @example
 * import { readDelimited } from '@truesweep/recordings';
 * howRead(readDelimited('t (s),U (V)\n0,1\n1,2\n').reading).startsWith('Time from column 1 “t” in s (by its heading)') // => true
 */
export function howRead(reading: DelimitedReading | SoundReading): string {
  return whole(reading, 'reading', () =>
    'coding' in reading ? soundRead(reading) : textRead(reading),
  );
}

function soundRead(reading: SoundReading): string {
  const { coding, bits, channels, signalChannel, supplyChannel, secondChannel } = reading;
  return soundSentence({
    coding: say`${coding}, ${bits} bits`,
    channels,
    signal: counted(signalChannel),
    ...(supplyChannel !== undefined && { supply: counted(supplyChannel) }),
    ...(secondChannel !== undefined && { second: counted(secondChannel) }),
    rate: formatQuantity(reading.hertz, 'Hz'),
    fullScale: formatQuantity(reading.range.high, 'V'),
    samples: say`${reading.rows}`,
    withoutReading: reading.withoutReading,
    isCut: reading.isCut,
  });
}

function textRead(reading: DelimitedReading): string {
  const { columns, sampleRate } = reading;
  const described = (role: ColumnRole): string | undefined => {
    const column = columns[role];
    if (!column) return undefined;
    const { index, name, chosenFrom } = column;
    const shared = { number: counted(index), name, chosenFrom };
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
    rows: say`${reading.rows}`,
    withoutReading: reading.withoutReading,
    repeatedHeadings: reading.repeatedHeadings,
    footerLines: reading.footerLines,
    ...(reading.damagedLines !== undefined && { damagedLines: reading.damagedLines }),
    delimiter: delimiterLabels[reading.delimiter],
    encoding: encodingLabels[reading.encoding],
  });
}

/** A column's or channel's number as people count. */
function counted(index: number): number {
  number(index, 'index');
  return index + 1;
}
