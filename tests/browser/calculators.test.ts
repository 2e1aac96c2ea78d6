import {
  boilingTemperature,
  type Circuit,
  carryToBench,
  carryToVehicle,
  chooseBenchLoad,
  chooseLimiter,
  closedSetting,
  coilCurrent,
  dirtEffect,
  dividerVolts,
  findPins,
  fitThermistor,
  formatQuantity,
  judgePressure,
  judgeThermistor,
  judgeTwoState,
  judgeWinding,
  locateCodeFault,
  pressureRatio,
  type QuantityUnit,
  recognisePotentiometer,
  resistanceAtTemperature,
  resistanceBand,
  supplyAndGroundDrop,
  wrongConnections,
} from '@truesweep/core';
import {
  closedSettingSentences,
  codeWords,
  connectionRows,
  contactlessWords,
  limiterAdviceSentences,
  outcomeLabels,
  pinFindingSentences,
  readingVerdictMeanings,
  thermistorAdvice,
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

/** The coolant sensor that stands in the forms first. */
const coolant = {
  kind: 'table',
  rows: (
    [
      [0, 5500, 6800],
      [20, 2300, 2800],
      [40, 1070, 1300],
      [60, 540, 645],
      [80, 290, 345],
      [110, 127, 151],
    ] as const
  ).map(([temperature, low, high]) => ({ temperature, ohms: Math.sqrt(low * high), low, high })),
} as const;

const nowOf = (isChanged: boolean) => {
  const ohms = resistanceBand(coolant, isChanged ? 60 : 21.5);
  const volts = (of: number) => dividerVolts({ supply: 5, pullUp: 1000 }, of);
  return { ohms, low: volts(ohms.low), high: volts(ohms.high) };
};

const baths = (isChanged: boolean) => {
  const pressure = 100_900;
  const perPascal = (boilingTemperature(pressure + 50) - boilingTemperature(pressure - 50)) / 100;
  const ice = isChanged ? 9000 : 6240;
  return judgeThermistor({ law: coolant }, [
    { temperature: 0, temperatureUncertainty: 0.1, ohms: ice, uncertainty: 0.005 * ice },
    {
      temperature: boilingTemperature(pressure),
      temperatureUncertainty: 100 * perPascal,
      ohms: 184,
      uncertainty: 0.005 * 184,
    },
  ]);
};

const fitted = (isChanged: boolean) =>
  fitThermistor(
    [
      [0, 6020],
      [21.5, 2310],
      [48, isChanged ? 1000 : 845],
      [71, 393],
      [99.4, 176],
    ].map(([temperature = 0, ohms = 0]) => ({ temperature, ohms, uncertainty: 0.3 })),
  );

const manifold = {
  reference: 'absolute',
  response: {
    kind: 'table',
    rows: [
      { pressure: 15_000, ratio: 0.235 / 5 },
      { pressure: 115_000, ratio: 4.635 / 5 },
    ],
  },
  error: 2000,
  supply: { low: 4.75, high: 5.25 },
} as const;

const inchOfMercury = 13_595.1 * 9.80665 * 0.0254;
const port = (isChanged: boolean) => {
  const read = { supply: 5.02, uncertainty: 0.004 };
  return judgePressure(manifold, { station: 100_900, stationUncertainty: 100 }, [
    { ...read, gauge: 0, gaugeUncertainty: 0, volts: isChanged ? 3.5 : 4.03 },
    { ...read, gauge: -10 * inchOfMercury, gaugeUncertainty: 400, volts: 2.53 },
    { ...read, gauge: -18 * inchOfMercury, gaugeUncertainty: 400, volts: 1.31 },
  ]);
};

const crank = (isChanged: boolean) => {
  const ohms = isChanged ? 1250 : 1012;
  return {
    judged: judgeWinding({ low: 765, high: 935 }, [
      {
        ohms,
        uncertainty: 0.003 * ohms,
        leads: 0.2,
        temperature: 68,
        temperatureUncertainty: 3,
      },
    ]),
    current: coilCurrent({ ohms: ohms - 0.2, at: 68, volts: 12, temperature: 68 }),
  };
};

const leaning = (isChanged: boolean) => {
  const read = { uncertainty: 0.01 };
  return judgeTwoState(
    {
      kind: 'volts',
      rest: { low: 0.4, high: 1.4 },
      operated: { low: 3.6, high: 4.4 },
      latched: true,
      bothWays: true,
      changesBetween: { low: 55, high: 75 },
    },
    [
      { ...read, state: 'rest', value: 0.98 },
      { ...read, state: 'operated', value: 4.02, changedAt: 66, angleUncertainty: 2 },
      { ...read, state: 'operated-other-way', value: isChanged ? 1.01 : 4.05 },
      { ...read, state: 'back-at-rest', value: 4.02 },
      { ...read, state: 'key-cycled', value: 0.98 },
    ],
  );
};

const terminals = (isChanged: boolean) =>
  recognisePotentiometer({
    endToEnd: 5000,
    endToEndReversed: isChanged ? 8000 : 5000,
    oneToWiper: 900,
    otherToWiper: 4200,
    moved: { oneToWiper: 3900, otherToWiper: 1200 },
  });

const calculators: readonly Calculator[] = [
  {
    path: 'temperature-now',
    table: 'rows',
    changed: ['now', '140 °F'],
    bad: ['now', '20', /no unit; write .* 68.°F/],
    said: (isChanged) => {
      const { ohms, low, high } = nowOf(isChanged);
      return [
        ...[ohms.low, ohms.high].map((one) => text(one, 'Ω')),
        text(low, 'V'),
        text(high, 'V'),
      ];
    },
    cells: (isChanged) => [text(nowOf(isChanged).ohms.nominal, 'Ω')],
  },
  {
    path: 'ice-and-boiling',
    table: 'checks',
    changed: ['iceOhms', '9k'],
    bad: ['barometer', '1009', /no unit/],
    said: (isChanged) => {
      const { verdict, advice } = baths(isChanged);
      return [readingVerdictMeanings[verdict], ...advice.map((code) => thermistorAdvice[code])];
    },
    cells: (isChanged) => baths(isChanged).checks.map(({ outcome }) => outcomeLabels[outcome]),
  },
  {
    path: 'fit-a-curve',
    table: 'law',
    changed: ['ohms3', '1k'],
    bad: ['ohms3', '3k', /point 3 is warmer/],
    said: (isChanged) => {
      const { chiSquare = 0, outlier } = fitted(isChanged);
      return [chiSquare.toPrecision(2), ...(outlier ? [`Point ${outlier.point + 1}`] : [])];
    },
    cells: (isChanged) => {
      const { law } = fitted(isChanged);
      if (law.kind !== 'steinhart-hart') throw new Error('must be fitted');
      return [law.a, law.b, law.c].map((one) => one.toExponential(6));
    },
  },
  {
    path: 'pressure-sensor',
    table: 'expected',
    changed: ['openVolts', '3.5'],
    bad: ['pump1', '18 inHg', /gauge or absolute/],
    said: (isChanged) => {
      const { low, high } = pressureRatio(manifold, 100_900);
      return [
        readingVerdictMeanings[port(isChanged).verdict],
        ...[low, high].map((ratio) => text(5.02 * ratio, 'V')),
      ];
    },
    cells: () => {
      const { low, nominal, high } = pressureRatio(manifold, 100_900 - 18 * inchOfMercury);
      return [low, nominal, high].map((ratio) => text(5.02 * ratio, 'V'));
    },
  },
  {
    path: 'coil',
    table: 'temperatures',
    changed: ['coilOhms', '1250'],
    bad: ['coilTemperature', '68', /no unit/],
    said: (isChanged) => {
      const { judged, current } = crank(isChanged);
      return [readingVerdictMeanings[judged.verdict], text(current.amps, 'A')];
    },
    cells: () => [765, 935].map((ohms) => text(resistanceAtTemperature({ ohms }, 80), 'Ω')),
  },
  {
    path: 'two-states',
    table: 'checks',
    changed: ['otherWay', '1010 mV'],
    bad: ['atRest', '5', /no reading; write volts or ohms/],
    said: (isChanged) => [readingVerdictMeanings[leaning(isChanged).verdict]],
    cells: (isChanged) => leaning(isChanged).checks.map(({ outcome }) => outcomeLabels[outcome]),
  },
  {
    path: 'potentiometer-or-not',
    table: 'parts',
    changed: ['endToEndReversed', '8k'],
    bad: ['endToEnd', '-5', /0.Ω to 1.GΩ/],
    said: (isChanged) => {
      const { conclusion, reasons } = terminals(isChanged);
      return [
        contactlessWords.conclusions[conclusion],
        ...reasons.map((reason) => contactlessWords.reasons[reason]),
      ];
    },
    cells: (isChanged) => [text(isChanged ? 3000 : 0, 'Ω')],
  },
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
    // The sentences may say what they said before: the table is waited for by itself.
    const shown = async () => (await tableOf(page, table)).flat();
    for (const cell of cells(true)) await expect.poll(shown).toContain(cell);
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

  // One visit with a phone: what is refused is what the check of accessibility looks at too.
  test('refuses a bad entry beside its field, keeps it through a reload, and starts again; accessible first and with the refusal', async () => {
    const { page, complaints } = await openPage(browser, address, {
      viewport: { width: 360, height: 740 },
    });
    const [name, wrong, refusal] = bad;
    expect(await violationsOf(page)).toEqual([]);
    await page.fill(`#entry-${name}`, wrong);
    await expect.poll(() => page.locator(`#refusal-${name}`).textContent()).toMatch(refusal);
    expect(await page.locator(`#entry-${name}`).getAttribute('aria-describedby')).toContain(
      `refusal-${name}`,
    );
    expect(await page.locator(`#${table}`).count()).toBe(0);
    expect(await violationsOf(page)).toEqual([]);
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
});

/** One component tells every answer: of what the page works out, of what a worker does, of single readings. */
const announced = ['set-the-closed-position', 'plan-the-hook-up', 'ice-and-boiling'].map(
  (named) => calculators.find(({ path }) => path === named)!,
);

test.each(announced)(
  '$path tells a screen reader of a change once, when the hand rests, and nothing at load',
  async ({ path, changed }) => {
    const { page } = await openPage(browser, `calculators/${path}/`);
    const status = page.locator('.readings p[role=status]');
    expect(await status.textContent()).toBe('');
    await page.locator(`#entry-${changed[0]}`).pressSequentially(changed[1], { delay: 20 });
    expect(await status.textContent()).toBe('');
    await expect.poll(() => status.textContent()).not.toBe('');
  },
);

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

test('a trouble code is told with the sensor plugged in, and by itself with the sensor unplugged', async () => {
  const { page, complaints } = await openPage(browser, 'calculators/trouble-code/');
  const answer = page.locator('.readings .answer');
  for (const [code, unplugged, bridged] of [
    ['P0118', 'high', undefined],
    ['P0118', 'high', 'low'],
    ['P0117', 'high', undefined],
    ['P0117', 'low', undefined],
    ['P0112', undefined, undefined],
  ] as const) {
    await page.selectOption('#entry-code', code);
    await page.selectOption('#entry-unplugged', unplugged ?? '');
    await page.selectOption('#entry-bridged', bridged ?? '');
    const { conclusion, because, next } = locateCodeFault({
      code,
      ...(unplugged && { unplugged }),
      ...(bridged && { bridged }),
    });
    const said = [
      codeWords.conclusions[conclusion],
      codeWords.reasons[because],
      next ? codeWords.steps[next] : code,
      code,
    ];
    for (const part of said) await expect.poll(() => answer.textContent()).toContain(part);
  }
  // A page that gives the code of hot or shorted a limit of high volts has it swapped.
  await page.getByText(codeWords.page).click();
  await page.fill('#entry-limitVolts', '4.8 V');
  await expect.poll(() => answer.textContent()).toContain(codeWords.comparisons.swapped('P0113'));
  await page.selectOption('#entry-pull', 'up');
  await expect
    .poll(() => page.locator('#refusal-pull').textContent())
    .toBe(codeWords.notThermistor);
  expect(complaints).toEqual([]);
});

test.each(['coil', 'ice-and-boiling', 'pressure-sensor', 'trouble-code'])(
  'the caution that %s came with stays in its place once scripts run',
  async (path) => {
    const plain = await openPage(browser, `calculators/${path}/`, { javaScriptEnabled: false });
    const caution = await plain.page.locator('.readings .caution').allTextContents();
    expect(caution).toHaveLength(1);
    const { page } = await openPage(browser, `calculators/${path}/`);
    expect(await page.locator('.readings .caution').allTextContents()).toEqual(caution);
    expect(await page.locator('.readings p.caution').count()).toBe(1);
  },
);
