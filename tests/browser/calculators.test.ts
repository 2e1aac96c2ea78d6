import {
  type Circuit,
  carryToBench,
  carryToVehicle,
  chooseBenchLoad,
  chooseLimiter,
  closedSetting,
  dirtEffect,
  findPins,
  formatQuantity,
  type QuantityUnit,
  supplyAndGroundDrop,
  wrongConnections,
} from '@truesweep/core';
import {
  closedSettingSentences,
  connectionRows,
  limiterAdviceSentences,
  pinFindingSentences,
} from '@truesweep/wording';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { openPage, scriptsRun, tableOf, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const text = (value: number, unit: QuantityUnit) => formatQuantity(value, unit, { trim: true });

const bench = (limiter: number): Circuit => ({
  source: { volts: 5 },
  limiter,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
});

/** A calculator with what core says of its first entries and of changed ones: sentences and cells of a table. */
interface Calculator {
  readonly path: string;
  readonly table: string;
  /** An entry with another text, and one that is refused with what its refusal names. */
  readonly changed: readonly [name: string, text: string];
  readonly bad: readonly [name: string, text: string, refusal: RegExp];
  readonly said: (isChanged: boolean) => readonly string[];
  readonly cells: (isChanged: boolean) => readonly string[];
}

const plan = (isChanged: boolean) => {
  const ratings = {
    wiper: isChanged ? { amps: 0.001, shortTerm: 0.001 } : { amps: 0.005, shortTerm: 0.005 },
    track: { watts: 0.2, shortTerm: 0.2 },
  };
  return {
    choice: chooseLimiter(bench(1000), ratings, { otherSource: 12 }),
    connections: wrongConnections(bench(1000), ratings, 12),
  };
};

const pins = (isChanged: boolean) => {
  const reading = (a: string, b: string, at: 'closed' | 'open', ohms: number) => ({
    between: [a, b] as const,
    at,
    ohms,
  });
  return findPins(
    ['A', 'B', 'C'],
    [
      reading('A', 'B', 'closed', isChanged ? Infinity : 5000),
      reading('A', 'B', 'open', 5000),
      reading('A', 'C', 'closed', 1300),
      reading('A', 'C', 'open', 5300),
      reading('B', 'C', 'closed', 5300),
      reading('B', 'C', 'open', 1300),
    ],
    { fraction: 0.01, ohms: 1 },
  );
};

const setting = (isChanged: boolean) =>
  closedSetting(
    0.62,
    isChanged ? 0.45 : 0.5,
    { kind: 'second-reading', degrees: 2, volts: 0.7 },
    0.003,
  );

const vehicle = { source: { volts: 5 }, limiter: 0, load: { pullDown: 220e3 } };
const carried = (isChanged: boolean) => {
  const volts = isChanged ? 1.5 : 0.42;
  const to = carryToVehicle({ volts }, bench(1000), vehicle);
  const back = carryToBench({ volts: 0.5 }, bench(1000), vehicle);
  if (to.kind !== 'carried' || back.kind !== 'carried') throw new Error('must carry');
  return { volts, to, back };
};

const drop = (isChanged: boolean) =>
  supplyAndGroundDrop(
    {
      reference: 5,
      referenceAtSensor: 4.86,
      sensorGround: isChanged ? 0.3 : 0.095,
      unitGround: 0.02,
      uncertainty: 0.003,
    },
    0.01,
  );

const dirt = (isChanged: boolean) => {
  const ohms = isChanged ? 100e3 : 10e3;
  return {
    effect: dirtEffect(bench(1000), 0.05, ohms),
    choice: chooseBenchLoad(bench(1000), {
      travels: [0.05],
      dirt: ohms,
      visible: 0.2,
      wiperCurrent: 0.001,
    }),
  };
};

const calculators: readonly Calculator[] = [
  {
    path: 'plan-the-hook-up',
    table: 'connections',
    changed: ['wiperCurrent', '1 mA'],
    bad: ['track', '1 Ω', /10.Ω to 10.MΩ/],
    said: (isChanged) => limiterAdviceSentences(plan(isChanged).choice, 1000),
    cells: (isChanged) => connectionRows(plan(isChanged).connections).slice(1).flat(),
  },
  {
    path: 'find-the-terminals',
    table: 'track',
    changed: ['ABclosed', 'OL'],
    bad: ['ACopen', '-5', /0.Ω to 1.GΩ/],
    said: (isChanged) => pinFindingSentences(pins(isChanged)),
    cells: (isChanged) => {
      const found = pins(isChanged);
      if (found.kind !== 'potentiometer') return [];
      const { track } = found.tracks[0]!;
      return [track.low, track.value, track.high].map((ohms) => text(ohms, 'Ω'));
    },
  },
  {
    path: 'set-the-closed-position',
    table: 'turn',
    changed: ['readingWanted', '0,45'],
    bad: ['turned', '400°', /−360° to 360°/],
    said: (isChanged) => closedSettingSentences(setting(isChanged)),
    cells: (isChanged) => {
      const found = setting(isChanged);
      if (found.kind !== 'turn') throw new Error('must turn');
      return [found.degrees, found.degrees - 2, 2 * found.uncertainty].map((at) => text(at, '°'));
    },
  },
  {
    path: 'bench-to-vehicle',
    table: 'places',
    changed: ['benchReading', '1,5'],
    bad: ['reference', '0 V', /100.mV to 60.V/],
    said: (isChanged) => {
      const { volts, to, back } = carried(isChanged);
      return [text(volts, 'V'), text(to.volts, 'V'), text(to.ratio, '%'), text(back.volts, 'V')];
    },
    cells: (isChanged) => {
      const { to } = carried(isChanged);
      return [text(to.position, '%'), text(to.volts, 'V')];
    },
  },
  {
    path: 'supply-and-ground-drop',
    table: 'drops',
    changed: ['sensorGround', '0,3'],
    bad: ['referenceAtSensor', 'x', /such as/],
    said: (isChanged) => [text(drop(isChanged).worstError, '%')],
    cells: (isChanged) => {
      const { supplyDrop, bottomError, topError } = drop(isChanged);
      return [text(supplyDrop, 'V'), text(bottomError, '%'), text(topError, '%')];
    },
  },
  {
    path: 'make-dirt-visible',
    table: 'loads',
    changed: ['dirt', '100k'],
    bad: ['visibleChange', '0', /1.µV to 60.V/],
    said: (isChanged) => {
      const { effect, choice } = dirt(isChanged);
      if (choice.kind !== 'chosen') throw new Error('must be possible');
      const load = choice.ways[choice.use];
      if (load.kind !== 'possible' || effect.dirty.kind !== 'change') throw new Error('must show');
      return [text(load.ohms, 'Ω'), text(effect.dirty.volts, 'V')];
    },
    cells: (isChanged) => {
      const { choice } = dirt(isChanged);
      if (choice.kind !== 'chosen') throw new Error('must be possible');
      return Object.values(choice.ways).flatMap((load) =>
        load.kind === 'possible' ? [text(load.ohms, 'Ω'), text(load.change, 'V')] : [],
      );
    },
  },
];

describe.each(calculators)('$path', ({ path, table, changed, bad, said, cells }) => {
  const address = `calculators/${path}/`;

  test('has a right first answer with scripts off', async () => {
    const { page } = await openPage(browser, address, { javaScriptEnabled: false });
    const answer = await page.locator('.readings .answer').textContent();
    for (const part of said(false)) expect(answer).toContain(part);
    const shown = (await tableOf(page, table)).flat();
    for (const cell of cells(false)) expect(shown).toContain(cell);
  });

  test('says what core says of a changed entry, and a link brings it back', async () => {
    const { page, complaints } = await openPage(browser, address);
    await page.fill(`#entry-${changed[0]}`, changed[1]);
    const answer = page.locator('.readings .answer');
    for (const part of said(true)) await expect.poll(() => answer.textContent()).toContain(part);
    const shown = (await tableOf(page, table)).flat();
    for (const cell of cells(true)) expect(shown).toContain(cell);
    expect([said(true), cells(true)]).not.toEqual([said(false), cells(false)]);

    const link = await page.locator('.keep a').getAttribute('href');
    expect(link).toMatch(/^#v1&/);
    await expect.poll(() => new URL(page.url()).hash).toBe(link);
    const again = await openPage(browser, address + link);
    expect(await again.page.inputValue(`#entry-${changed[0]}`)).toBe(changed[1]);
    await expect
      .poll(() => again.page.locator('.readings .answer').textContent())
      .toBe(await answer.textContent());
    expect([...complaints, ...again.complaints]).toEqual([]);
  });

  test('refuses a bad entry beside its field, keeps it through a reload, and starts again', async () => {
    const { page, complaints } = await openPage(browser, address);
    const [name, wrong, refusal] = bad;
    await page.fill(`#entry-${name}`, wrong);
    await expect.poll(() => page.locator(`#refusal-${name}`).textContent()).toMatch(refusal);
    expect(await page.locator(`#entry-${name}`).getAttribute('aria-describedby')).toContain(
      `refusal-${name}`,
    );
    expect(await page.locator(`#${table}`).count()).toBe(0);
    await expect.poll(() => new URL(page.url()).hash).toContain(name);
    await page.reload();
    await scriptsRun(page);
    expect(await page.inputValue(`#entry-${name}`)).toBe(wrong);
    await page.getByRole('button', { name: 'Start again' }).click();
    await expect.poll(() => page.locator('.refusal').count()).toBe(0);
    await expect.poll(() => page.locator(`#${table}`).count()).toBe(1);
    await expect.poll(() => new URL(page.url()).hash).toBe('');
    expect(complaints).toEqual([]);
  });

  test('passes an automatic check of accessibility, first and with a refusal, on a phone too', async () => {
    const { page } = await openPage(browser, address, { viewport: { width: 360, height: 740 } });
    expect(await violationsOf(page)).toEqual([]);
    await page.fill(`#entry-${bad[0]}`, bad[1]);
    await page.locator(`#refusal-${bad[0]}`).waitFor();
    expect(await violationsOf(page)).toEqual([]);
  });

  test('tells a screen reader of a change once, when the hand rests, and nothing at load', async () => {
    const { page } = await openPage(browser, address);
    const status = page.locator('.readings p[role=status]');
    expect(await status.textContent()).toBe('');
    await page.locator(`#entry-${changed[0]}`).pressSequentially(changed[1], { delay: 20 });
    expect(await status.textContent()).toBe('');
    await expect.poll(() => status.textContent()).not.toBe('');
  });
});

test.each([
  ['find-the-terminals', ['ABclosed', 'ABopen', 'ACclosed', 'ACopen', 'BCclosed', 'BCopen']],
  ['set-the-closed-position', ['readingNow', 'turned', 'readingThen', 'readingWanted']],
  ['bench-to-vehicle', ['benchReading', 'vehicleReading']],
  ['supply-and-ground-drop', ['unitReference', 'referenceAtSensor', 'sensorGround', 'unitGround']],
])('%s says which of its readings are an example, until all are one’s own', async (path, names) => {
  const { page } = await openPage(browser, `calculators/${path}/`);
  const note = page.locator('.example');
  const labels = await Promise.all(
    names.map((name) => page.locator(`label[for=entry-${name}]`).textContent()),
  );
  for (const label of labels) expect(await note.textContent()).toContain(label);
  for (const name of names.slice(1)) await page.fill(`#entry-${name}`, '1');
  await expect.poll(() => note.textContent()).toContain(`example: ${labels[0]}.`);
  await page.fill(`#entry-${names[0]}`, '1');
  await expect.poll(() => note.count()).toBe(0);
});

test('a link of a newer version, or with unknown entries, says so', async () => {
  const address = 'calculators/set-the-closed-position/';
  const newer = await openPage(browser, `${address}#v7&turned=3`);
  await expect.poll(() => newer.page.locator('.notice').textContent()).toContain('newer version');
  expect(await newer.page.inputValue('#entry-turned')).toBe('2°');
  const odd = await openPage(browser, `${address}#v1&turned=3&sise=4`);
  await expect.poll(() => odd.page.locator('.notice').textContent()).toContain('sise');
  expect(await odd.page.inputValue('#entry-turned')).toBe('3');
});

test('on paper there is room for what is read, and no button', async () => {
  const { page } = await openPage(browser, 'calculators/expected-readings/');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.bench-sheet').isVisible()).toBe(true);
  expect(await page.locator('.bench-sheet tbody tr').count()).toBe(2);
  for (const gone of ['.keep', 'header.header', '.hint'])
    expect(await page.locator(gone).first().isVisible(), gone).toBe(false);
});
