import { type Expectation, formatQuantity, type QuantityUnit } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import {
  couplingLabels,
  reportWords,
  samplingLabels,
  tolerancedText,
  windowWords,
} from '@truesweep/wording';

/** Sensor, hook-up and instrument of a job, with the windows that follow from them, as rows of label and value. */
export function conditionRows(
  { sensor, hookUp, instrument }: Job,
  { windows }: Expectation,
): readonly (readonly [string, string])[] {
  const { source, limiter, pullDown } = hookUp;
  const position = (value: number, spread: number | undefined): string =>
    tolerancedText(text(value, '%'), spread);
  const window = ({ low, high }: { low: number; high: number }): string =>
    windowWords(text(low, 'V'), text(high, 'V'));
  return [
    [reportWords.sensor, sensor.name],
    [reportWords.track, tolerancedText(text(sensor.track, 'Ω'), sensor.tolerances?.track)],
    [
      reportWords.wiperClosed,
      position(sensor.closedPosition ?? 0, sensor.tolerances?.closedPosition),
    ],
    [reportWords.wiperOpen, position(sensor.openPosition ?? 1, sensor.tolerances?.openPosition)],
    [reportWords.source, tolerancedText(text(source.volts, 'V'), hookUp.tolerances?.source)],
    [reportWords.limiter, tolerancedText(text(limiter, 'Ω'), hookUp.tolerances?.limiter)],
    ...(pullDown === undefined
      ? []
      : [
          [
            reportWords.pullDown,
            tolerancedText(text(pullDown, 'Ω'), hookUp.tolerances?.pullDown),
          ] as const,
        ]),
    [reportWords.instrument, instrument.name],
    [reportWords.inputResistance, text(instrument.inputResistance, 'Ω')],
    ...(instrument.coupling === undefined
      ? []
      : [[reportWords.coupling, couplingLabels[instrument.coupling]] as const]),
    ...(instrument.sampling === undefined
      ? []
      : [[reportWords.sampling, samplingLabels[instrument.sampling]] as const]),
    [reportWords.closedWindow, window(windows.closed)],
    [reportWords.openWindow, window(windows.open)],
  ];
}

function text(value: number, unit: QuantityUnit): string {
  return formatQuantity(value, unit, { trim: true });
}
