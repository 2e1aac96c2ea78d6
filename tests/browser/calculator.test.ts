import {
  type Circuit,
  expectedCurve,
  expectedWindows,
  formatQuantity,
  operatingPoint,
  type PartName,
  positionAt,
  type QuantityUnit,
} from '@truesweep/core';
import { CurveDrawing } from '@truesweep/drawings';
import { type Browser, chromium, type Page } from 'playwright-core';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

/** The calculator's page, and what its console complained of. */
const open = (javaScriptEnabled: boolean) =>
  openPage(browser, 'calculators/expected-readings/', { javaScriptEnabled });

const written = (value: number, unit: QuantityUnit) => formatQuantity(value, unit, { trim: true });

const parts: readonly PartName[] = [
  'source',
  'limiter',
  'supplyLead',
  'trackAbove',
  'trackBelow',
  'groundLead',
  'contact',
  'pullDown',
];

/** What core says of the form's first entries, with another limiting resistor. */
function saidByCore(limiter: number) {
  const circuit: Circuit = {
    source: { volts: 5 },
    limiter,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  };
  const windows = expectedWindows(circuit, {
    source: 0.01,
    limiter: 0.05,
    track: 0.2,
    closedPosition: 0.02,
    openPosition: 0.02,
  });
  const points = [0, 1].map((at) => operatingPoint(circuit, positionAt(circuit.sensor, at)));
  const curve = expectedCurve(circuit);
  const svg = renderToString(h(CurveDrawing, { id: 'curve-drawing', curve, windows }));
  return {
    windows: [windows.closed, windows.open].map(({ low, nominal, high }) =>
      [low, nominal, high].map((volts) => written(volts, 'V')),
    ),
    curve: Array.from(expectedCurve(circuit, 11).volts, (volts) => [written(volts, 'V')]),
    currents: parts.map((part) =>
      points.map((point) => written(point.parts[part]!.amps as number, 'A')),
    ),
    drawnCurve: /class="curve" d="([^"]+)"/.exec(svg)![1],
    drawnReadings: points.map((point) => written(point.output as number, 'V')),
    drawnLimiter: written(limiter, 'Ω'),
  };
}

async function cells(page: Page, table: string): Promise<string[][]> {
  const rows = await page.locator(`#${table} tbody tr`).all();
  return Promise.all(rows.map((row) => row.locator('td').allTextContents()));
}

async function shown(page: Page) {
  const circuit = await page.locator('#circuit-drawing text').allTextContents();
  return {
    windows: await cells(page, 'windows'),
    curve: await cells(page, 'curve'),
    currents: await cells(page, 'currents'),
    drawnCurve: await page.locator('#curve-drawing path.curve').getAttribute('d'),
    drawnReadings: circuit.slice(circuit.indexOf('Reading') + 1).slice(0, 2),
    drawnLimiter: circuit[circuit.indexOf('Limiting resistor') + 1],
  };
}

test('with scripts off the first answer is right, in words, numbers and drawings', async () => {
  const { page } = await open(false);
  const said = saidByCore(1000);
  expect(await shown(page)).toEqual(said);
  const answer = await page.locator('.readings .answer').textContent();
  const [closed, opened] = said.windows as [string[], string[]];
  for (const volts of [closed[0]!, closed[2]!, opened[0]!, opened[2]!])
    expect(answer).toContain(volts);
});

test('with scripts on, another limiting resistor changes curve, windows and currents to what core says', async () => {
  const { page, complaints } = await open(true);
  await page.locator('input[name=limiter]').fill('2k2');
  await expect.poll(() => shown(page)).toEqual(saidByCore(2200));
  expect(saidByCore(2200)).not.toEqual(saidByCore(1000));
  expect(complaints).toEqual([]);
});

test('an entry that has two readings is refused beside its field, and no answer stands on the page', async () => {
  const { page, complaints } = await open(true);
  const input = page.locator('input[name=track]');
  await input.fill('1,500');
  await expect.poll(() => page.locator('#refusal-track').textContent()).toContain('1,500');
  expect(await input.getAttribute('aria-invalid')).toBe('true');
  expect(await input.getAttribute('aria-describedby')).toContain('refusal-track');
  expect(await page.locator('.readings .answer').textContent()).toContain('Track resistance');
  for (const gone of ['#windows', '#curve', '#currents', '.readings svg'])
    expect(await page.locator(gone).count(), gone).toBe(0);
  await input.fill('1k5');
  await expect.poll(() => page.locator('#windows').count()).toBe(1);
  expect(await page.locator('.refusal').count()).toBe(0);
  expect(complaints).toEqual([]);
});

test('the drawings carry no style of their own', async () => {
  const { page } = await open(true);
  expect(await page.locator('.readings svg').count()).toBe(2);
  expect(await page.locator('.readings [style], .readings style').count()).toBe(0);
});
