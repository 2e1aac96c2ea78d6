import {
  expectedCurve,
  expectedWindows,
  operatingPoint,
  positionAt,
  scoreSweep,
  simulateSweep,
  sweepColumns,
} from '@truesweep/core';
import { expectation } from '@truesweep/core/expectation';
import type { ComponentChild } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { CircuitDrawing } from './CircuitDrawing.js';
import { CurveDrawing } from './CurveDrawing.js';
import { circuitSvg } from './circuitSvg.js';
import { curveSvg } from './curveSvg.js';
import { elementText } from './elementText.js';
import { TraceDrawing } from './TraceDrawing.js';
import { TravelMapDrawing } from './TravelMapDrawing.js';
import { traceColumns } from './tracePlot.js';
import { traceSvg } from './traceSvg.js';
import { travelMapSvg } from './travelMapSvg.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6, pullUp: { ohms: 47_000, volts: 3.3 } },
};
const windows = expectedWindows(circuit, { limiter: 0.05, closedPosition: 0.02 });
const at = (travel: number) => operatingPoint(circuit, positionAt(circuit.sensor, travel));

const { sweep } = simulateSweep({
  circuit,
  movements: [
    { kind: 'hold', seconds: 0.5 },
    { kind: 'turn', to: 1, seconds: 1.5 },
    { kind: 'hold', seconds: 0.5 },
    { kind: 'turn', to: 0, seconds: 1.5 },
    { kind: 'hold', seconds: 0.5 },
  ],
  faults: [{ kind: 'worn-spot', travel: 0.4, width: 0.01, ohms: Number.POSITIVE_INFINITY }],
  recorder: { interval: 0.002, noise: 0.001 },
  seed: 1,
});
const score = scoreSweep(sweep, expectation(circuit, { closedPosition: 0.02 }));

const markers = [{ travel: 0.3, volts: 1.4, label: 'a < b & "c" > d' }];
const drawings: Record<string, readonly [text: string, component: ComponentChild]> = {
  circuit: (() => {
    const props = { id: 'bench', circuit, closed: at(0), open: at(1) };
    return [circuitSvg(props), <CircuitDrawing key="" {...props} />] as const;
  })(),
  curve: (() => {
    const props = { id: 'line', curve: expectedCurve(circuit), windows, markers };
    return [curveSvg(props), <CurveDrawing key="" {...props} />] as const;
  })(),
  trace: (() => {
    const { findings } = score;
    const props = { id: 'trace', columns: sweepColumns(sweep, traceColumns()), findings, windows };
    return [traceSvg(props), <TraceDrawing key="" {...props} />] as const;
  })(),
  'travel map': (() => {
    const props = { id: 'map', score };
    return [travelMapSvg(props), <TravelMapDrawing key="" {...props} />] as const;
  })(),
};

/** An element without content may be closed by itself or by a tag of its own. */
const alike = (markup: string) => markup.replaceAll(/<(\w+)([^<>]*)><\/\1>/g, '<$1$2/>');

test.each(Object.entries(drawings))('%s: the text is what Preact renders', (_, [text, node]) => {
  expect(text).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[\s\S]*<\/svg>$/);
  expect(alike(text)).toBe(alike(renderToString(<g>{node}</g>).slice(3, -4)));
});

test('words and attributes can’t become markup', () => {
  expect(drawings.curve?.[0]).toContain('a &lt; b &amp; &quot;c&quot; > d');
  expect(elementText(<g id={'"><script>'} class={undefined} />)).toBe(
    '<g id="&quot;>&lt;script>"/>',
  );
});
