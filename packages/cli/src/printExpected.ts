import { type Determined, formatQuantity, type Volts } from '@truesweep/core';
import {
  drawingWords,
  formatAlike,
  partLabels,
  reportWords,
  windowWords,
} from '@truesweep/wording';
import type { ExpectedReadings } from './expectedReadings.js';
import { printTheseCautions } from './printCautions.js';
import { type TextPart, table } from './textPart.js';

/** The expected readings as lines of text. */
export function printExpected(expected: ExpectedReadings): readonly TextPart[] {
  const { title, curve, windows, restLevel, closed, open } = expected;
  const { numbers, unit } = formatAlike(
    curve.map(({ volts }) => volts),
    'V',
  );
  const window = ({ low, high }: { low: Volts; high: Volts }): string =>
    windowWords(quantity(low), quantity(high));
  const rows = [
    [reportWords.closedWindow, window(windows.closed)],
    [reportWords.openWindow, window(windows.open)],
    ...(restLevel === undefined ? [] : [[reportWords.restLevel, quantity(restLevel)]]),
  ];
  return [
    title,
    table([], rows, ['left', 'left']),
    '',
    table(
      [drawingWords.travel, drawingWords.reading],
      curve.map(({ travel }, i) => [
        formatQuantity(travel, '%', { trim: true }),
        `${numbers[i]} ${unit}`,
      ]),
      ['right', 'right'],
    ),
    '',
    table(
      ['', drawingWords.closed, drawingWords.open],
      (['source', 'limiter', 'contact'] as const).map((part) => [
        partLabels[part],
        current(closed.parts[part]?.amps),
        current(open.parts[part]?.amps),
      ]),
      ['left', 'right', 'right'],
    ),
    '',
    ...printTheseCautions(['unplugged', 'limiter']),
  ];
}

function quantity(volts: Volts): string {
  return formatQuantity(volts, 'V', { trim: true });
}

function current(amps: Determined<number> | undefined): string {
  return typeof amps === 'number' ? formatQuantity(amps, 'A', { trim: true }) : '–';
}
