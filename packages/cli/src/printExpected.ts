import {
  type Determined,
  type ExpectedWindows,
  formatQuantity,
  type OperatingPoint,
  operatingPoint,
  positionAt,
  type Volts,
} from '@truesweep/core';
import { type Job, jobCircuit, jobExpectation } from '@truesweep/jobs';
import {
  drawingWords,
  formatAlike,
  partLabels,
  reportWords,
  windowWords,
} from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import { printCautions } from './printCautions.js';

/** What a sound sensor reads on a hook-up. */
export interface ExpectedReadings {
  readonly title: string;
  /** Travel, a fraction, and reading, V. */
  readonly curve: readonly { readonly travel: number; readonly volts: Volts }[];
  readonly windows: ExpectedWindows;
  /** Where the signal goes with the wiper lifted, V. */
  readonly restLevel?: Volts;
  /** Currents and heat with the throttle at each stop. */
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}

const steps = 10;

/** Works out curve, windows and currents of a job. */
export function expectedReadings(job: Job): ExpectedReadings {
  const circuit = jobCircuit(job);
  const { windows, restLevel } = jobExpectation(job);
  const at = (travel: number): OperatingPoint =>
    operatingPoint(circuit, positionAt(circuit.sensor, travel));
  const curve = Array.from({ length: steps + 1 }, (_, i) => {
    const travel = i / steps;
    const { output } = at(travel);
    return { travel, volts: typeof output === 'number' ? output : Number.NaN };
  });
  return {
    title: job.title,
    curve,
    windows,
    ...(restLevel !== undefined && { restLevel }),
    closed: at(0),
    open: at(1),
  };
}

/** The expected readings as lines of text. */
export function printExpected(expected: ExpectedReadings): readonly string[] {
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
    ...alignColumns(rows, ['left', 'left']).map(indented),
    '',
    ...alignColumns(
      [
        [drawingWords.travel, drawingWords.reading],
        ...curve.map(({ travel }, i) => [
          formatQuantity(travel, '%', { trim: true }),
          `${numbers[i]} ${unit}`,
        ]),
      ],
      ['right', 'right'],
    ).map(indented),
    '',
    ...alignColumns(
      [
        ['', drawingWords.closed, drawingWords.open],
        ...(['source', 'limiter', 'contact'] as const).map((part) => [
          partLabels[part],
          current(closed.parts[part]?.amps),
          current(open.parts[part]?.amps),
        ]),
      ],
      ['left', 'right', 'right'],
    ).map(indented),
    '',
    ...printCautions(),
  ];
}

function indented(line: string): string {
  return `  ${line}`;
}

function quantity(volts: Volts): string {
  return formatQuantity(volts, 'V', { trim: true });
}

function current(amps: Determined<number> | undefined): string {
  return typeof amps === 'number' ? formatQuantity(amps, 'A', { trim: true }) : '–';
}
