import { formatMeasure, formatQuantity } from '@truesweep/core';
import type { ExpectedOfKind } from '@truesweep/jobs';
import { expectedWords, formatAlike, sensorKindLabels } from '@truesweep/wording';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** What a sound sensor must read, as lines of text. */
export function printExpectedReadings(
  title: string,
  sensor: string,
  expected: ExpectedOfKind,
): readonly TextPart[] {
  return [
    title,
    `${sensorKindLabels[expected.kind]}: ${sensor}`,
    '',
    ...partsOf(expected),
    '',
    ...printTheseCautions(['unplugged']),
  ];
}

function partsOf(expected: ExpectedOfKind): readonly TextPart[] {
  switch (expected.kind) {
    case 'thermistor': {
      const { rows, faults, settles } = expected;
      const hasVolts = rows.some(({ volts }) => volts);
      const head = [
        expectedWords.temperature,
        expectedWords.resistance,
        ...(hasVolts ? [expectedWords.voltage] : []),
        expectedWords.shown,
      ];
      const lines = rows.map(({ temperature, ohms, volts, shown }) => [
        formatMeasure(temperature, '°C', 1),
        bandText(ohms, 'Ω'),
        ...(volts ? [bandText(volts, 'V')] : []),
        formatMeasure(shown, '°C', 0),
      ]);
      return [
        table(
          head,
          lines,
          head.map(() => 'right' as const),
        ),
        ...(settles === undefined
          ? []
          : ['', paragraph(expectedWords.settles(formatQuantity(settles, 's', { digits: 2 })))]),
        ...(faults
          ? [
              '',
              paragraph(
                expectedWords.faults(...(both(faults.broken, faults.shorted) as [string, string])),
              ),
            ]
          : []),
      ];
    }
    case 'pressure': {
      const { rows, station, supply } = expected;
      const head = [
        expectedWords.port,
        expectedWords.absolute,
        expectedWords.output(text(supply, 'V')),
        expectedWords.ratio,
      ];
      const lines = rows.map(({ gauge, absolute, ratio, volts }) => [
        gauge === 0 ? expectedWords.open : formatMeasure(gauge, 'kPa', 0),
        formatMeasure(absolute, 'kPa', 1),
        bandText(volts, 'V'),
        bandText(ratio, '%'),
      ]);
      return [
        paragraph(
          expectedWords.air(
            formatMeasure(station.pressure, 'kPa', 1),
            formatMeasure(2 * station.uncertainty, 'kPa', 1),
          ),
        ),
        table(
          head,
          lines,
          head.map(() => 'right' as const),
        ),
      ];
    }
    case 'two-state': {
      const { rest, operated, reads, latched, bothWays, changesBetween } = expected.sensor;
      const unit = reads === 'ohms' ? 'Ω' : reads === 'volts' ? 'V' : '%';
      const window = ({ low, high }: { readonly low?: number; readonly high?: number }) =>
        low !== undefined && high !== undefined
          ? bandText({ low, high }, unit)
          : low !== undefined
            ? expectedWords.atLeast(text(low, unit))
            : expectedWords.atMost(text(high!, unit));
      return [
        table(
          [],
          [
            [expectedWords.rest, window(rest)],
            [expectedWords.operated, window(operated)],
            ...(bothWays ? [[expectedWords.otherWay, window(operated)]] : []),
            [expectedWords.back, window(latched ? operated : rest)],
            ...(latched ? [[expectedWords.keyCycled, window(rest)]] : []),
            ...(changesBetween
              ? [
                  [
                    expectedWords.changesBetween,
                    expectedWords.between(
                      changesBetween.low.toFixed(1),
                      `${changesBetween.high.toFixed(1)} °`,
                    ),
                  ],
                ]
              : []),
          ],
          ['left', 'right'],
        ),
      ];
    }
    case 'winding':
      return [
        table(
          [expectedWords.temperature, expectedWords.resistance],
          expected.rows.map(({ temperature, low, high }) => [
            formatMeasure(temperature, '°C', 0),
            low !== undefined && high !== undefined
              ? bandText({ low, high }, 'Ω')
              : low !== undefined
                ? expectedWords.atLeast(text(low, 'Ω'))
                : expectedWords.atMost(text(high!, 'Ω')),
          ]),
          ['right', 'right'],
        ),
      ];
  }
}

function bandText(
  { low, high }: { readonly low: number; readonly high: number },
  unit: 'Ω' | 'V' | '%',
): string {
  if (low === high) return text(low, unit);
  const { numbers, unit: shown } = formatAlike([low, high], unit);
  return expectedWords.between(numbers[0]!, `${numbers[1]} ${shown}`);
}

const both = (one: number, other: number) => [text(one, 'V'), text(other, 'V')];

function text(value: number, unit: 'Ω' | 'V' | '%'): string {
  const { numbers, unit: shown } = formatAlike([value], unit);
  return `${numbers[0]} ${shown}`;
}
