import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { readingsSentence, readingsWords, windowWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { quantityText } from '../forms/quantityText.js';
import { BandTable } from './BandTable.js';
import { CurrentsTable } from './CurrentsTable.js';
import { CurveTable } from './CurveTable.js';
import {
  type ExpectedReadings as Expected,
  expectedReadings,
  expectedReadingsForm,
} from './expectedReadings.js';
import { WindowsTable } from './WindowsTable.js';

/** The calculator: the parts of a hook-up in, windows, curve and currents out. */
export function ExpectedReadings(props: CalculatorProps) {
  return <Calculator form={expectedReadingsForm} show={show} workings={workings} {...props} />;
}

const workings = () => import('../workings/expectedReadings.js');

function show(values: Parameters<typeof expectedReadings>[0]): ShownResult {
  const expected = expectedReadings(values);
  const { circuit, curve, windows, closed, open } = expected;
  return {
    sentences: [inWords(expected)],
    caution: circuit.limiter === 0 ? readingsWords.noLimiter : undefined,
    picture: <CurveDrawing id="windows-picture" curve={curve} windows={windows} />,
    drawing: <CircuitDrawing id="circuit-drawing" circuit={circuit} closed={closed} open={open} />,
    below: (
      <>
        <WindowsTable windows={windows} />
        <div class="beside">
          <CurveDrawing id="curve-drawing" curve={curve} windows={windows} />
          <CurveTable curve={curve} />
        </div>
        <BandTable closed={expected.closedUncertainty} open={expected.openUncertainty} />
        <CurrentsTable closed={closed} open={open} />
      </>
    ),
    sheet: (['closed', 'open'] as const).map((stop) => {
      const { low, high } = rangeOf(expected, stop);
      return [`${readingsWords.throttle}: ${readingsWords[stop]}`, windowWords(low, high)];
    }),
  };
}

function rangeOf({ windows }: Expected, stop: 'closed' | 'open') {
  return {
    low: quantityText(windows[stop].low, 'V'),
    high: quantityText(windows[stop].high, 'V'),
  };
}

function inWords(expected: Expected): string {
  return readingsSentence({
    closed: rangeOf(expected, 'closed'),
    open: rangeOf(expected, 'open'),
    source: quantityText(expected.circuit.source.volts, 'V'),
    straight: quantityText(expected.straight, 'V'),
    nominal: quantityText(expected.windows.open.nominal, 'V'),
  });
}
