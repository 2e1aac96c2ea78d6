import { formatQuantity, type QuantityUnit } from '@truesweep/core';
import { type Job, jobExpectation } from '@truesweep/jobs';
import {
  couplingLabels,
  reportWords,
  restsOnWords,
  samplingLabels,
  testTimeLabels,
  tolerancedText,
  windowWords,
} from '@truesweep/wording';
import type { GivenJob, RestsOnRow } from './protocol.js';
import { testTimes } from './testTimes.js';

/** Every value of sensor, hook-up, instrument and deliberate tests that a verdict rests on, with the windows that follow; what is nought or unknown is left out. */
export function restsOn(
  job: Job,
  { stretches, text: readBy }: Omit<GivenJob, 'job'>,
): readonly RestsOnRow[] {
  const { sensor, hookUp, instrument } = job;
  const { windows } = jobExpectation(job);
  const { leads, pullUp, tolerances = {} } = hookUp;
  const { closedPosition = 0, openPosition = 1, tolerances: spreads = {} } = sensor;
  const { range, coupling, sampling } = instrument;
  const window = ({ low, high }: { low: number; high: number }) =>
    windowWords(text(low, 'V'), text(high, 'V'));
  return [
    [reportWords.source, tolerancedText(text(hookUp.source.volts, 'V'), tolerances.source)],
    [reportWords.limiter, tolerancedText(text(hookUp.limiter, 'Ω'), tolerances.limiter)],
    [reportWords.track, tolerancedText(text(sensor.track, 'Ω'), spreads.track)],
    [reportWords.wiperClosed, tolerancedText(text(closedPosition, '%'), spreads.closedPosition)],
    [reportWords.wiperOpen, tolerancedText(text(openPosition, '%'), spreads.openPosition)],
    [reportWords.inputResistance, text(instrument.inputResistance, 'Ω')],
    ...known(reportWords.pullDown, hookUp.pullDown, 'Ω'),
    ...(pullUp
      ? [[restsOnWords.pullUp, `${text(pullUp.ohms, 'Ω')}, ${text(pullUp.volts, 'V')}`] as const]
      : []),
    ...known(restsOnWords.supplyLead, leads?.supply, 'Ω'),
    ...known(restsOnWords.groundLead, leads?.ground, 'Ω'),
    ...known(restsOnWords.contact, sensor.contact, 'Ω'),
    ...known(restsOnWords.resolution, instrument.resolution, 'V'),
    ...known(restsOnWords.uncertainty, instrument.uncertainty, 'V'),
    ...(range ? [[restsOnWords.range, window(range)] as const] : []),
    ...(coupling ? [[reportWords.coupling, couplingLabels[coupling]] as const] : []),
    ...(sampling ? [[reportWords.sampling, samplingLabels[sampling]] as const] : []),
    ...testTimes.flatMap(({ kind, from, to }) =>
      stretches
        .filter((stretch) => stretch.kind === kind)
        .flatMap(({ start, end }): readonly RestsOnRow[] => [
          [testTimeLabels[from], text(start, 's')],
          [testTimeLabels[to], text(end, 's')],
        ]),
    ),
    ...chosen(restsOnWords.signalUnit, readBy?.signalUnit),
    ...chosen(restsOnWords.timeUnit, readBy?.timeUnit),
    ...known(restsOnWords.voltsPerUnit, readBy?.voltsPerUnit, 'V'),
    [reportWords.closedWindow, window(windows.closed)],
    [reportWords.openWindow, window(windows.open)],
  ];
}

function chosen(label: string, value: string | undefined): readonly RestsOnRow[] {
  return value === undefined ? [] : [[label, value]];
}

function known(
  label: string,
  value: number | undefined,
  unit: QuantityUnit,
): readonly RestsOnRow[] {
  return value ? [[label, text(value, unit)]] : [];
}

function text(value: number, unit: QuantityUnit): string {
  return formatQuantity(value, unit, { trim: true });
}
