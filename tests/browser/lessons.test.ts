import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import {
  exerciseTopics,
  explainLoadingError,
  explainOperatingPoint,
  makeExercise,
  workingHtml,
} from '@truesweep/explain';
import { sheetWords } from '@truesweep/wording/working';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { newVisitor, openPage, openPageOf, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));
const lessons = ['divider', 'loading', 'limiter', 'meters', 'dropout', 'verdict', 'temperature'];

/** Gzipped scripts that a page asked for and that stand in it, KB of 1,024 bytes. */
function scriptSize(path: string, asked: readonly string[]): number {
  const site = inject('site');
  const own = scriptsOf(asked).map((url) => readFileSync(join(built, url.slice(site.length))));
  const html = readFileSync(join(built, path, 'index.html'), 'utf8');
  const inline = [...html.matchAll(/<script\b[^>]*>(.*?)<\/script>/gs)].map(([, body]) => body);
  const gzipped = [...own, inline.join('\n')].map((text) => gzipSync(text, { level: 9 }).length);
  return gzipped.reduce((sum, size) => sum + size, 0) / 1024;
}

const scriptsOf = (asked: readonly string[]): readonly string[] =>
  [...new Set(asked)].filter((url) => url.endsWith('.js'));

/** What tells the code of workings and of exercises: words that only they have. */
const fetchedLater = {
  workings: 'working-given',
  exercises: 'No clear exercise was found',
} as const;

/** Whether one of the scripts that were asked for holds some words. */
function holds(asked: readonly string[], words: string): boolean {
  const site = inject('site');
  return scriptsOf(asked).some((url) =>
    readFileSync(join(built, url.slice(site.length)), 'utf8').includes(words),
  );
}

/** The titles of the shown workings, and the HTML of each as the browser writes it. */
const shownSteps = (page: Page) =>
  page.locator('.lesson .workings > .working').evaluateAll((all) =>
    all.map((one) => ({
      title: one.querySelector('summary')?.textContent,
      html: one.querySelector('summary + div')?.innerHTML,
    })),
  );

/** The same of a working as the package writes it. */
async function writtenSteps(
  page: Page,
  workings: readonly ReturnType<typeof explainOperatingPoint>[],
) {
  const htmls = workings.map((working) => ({ title: working.title, html: workingHtml(working) }));
  return await page.evaluate(
    (all) =>
      all.map(({ title, html }) => {
        const place = document.createElement('div');
        place.innerHTML = html;
        return { title, html: place.innerHTML };
      }),
    htmls,
  );
}

describe.each(lessons)('the lesson on %s', (name) => {
  const path = `lessons/${name}/`;

  test('has at most 60 KB of script at first view, and fetches workings once a slider moves and exercises once they are begun', async () => {
    const { page, asked, complaints } = await openPage(browser, path);
    const first = scriptSize(path, asked);
    console.log(`${path} ${first.toFixed(1)} KB at first view (60 asked)`);
    expect(first).toBeLessThanOrEqual(60);
    expect(holds(asked, fetchedLater.workings)).toBe(false);
    expect(holds(asked, fetchedLater.exercises)).toBe(false);

    const slider = page.locator('.lesson input[type=range]').first();
    const [before, drawn] = [
      await slider.getAttribute('aria-valuetext'),
      await page.locator('.lesson svg').first().innerHTML(),
    ];
    const steps = JSON.stringify(await shownSteps(page));
    await slider.press('ArrowLeft');
    await expect.poll(async () => JSON.stringify(await shownSteps(page))).not.toBe(steps);
    const told = await slider.getAttribute('aria-valuetext');
    expect(told).toMatch(name === 'verdict' ? /^\d$/ : /^−?[\d.]+\s\S+$/);
    expect(told).not.toBe(before);
    expect(await page.locator('.lesson output').first().textContent()).toBe(told);
    expect(await page.locator('.lesson svg').first().innerHTML()).not.toBe(drawn);
    expect(holds(asked, fetchedLater.workings)).toBe(true);
    expect(holds(asked, fetchedLater.exercises)).toBe(false);

    await page.getByRole('button', { name: 'Begin the exercises' }).click();
    await page.locator('.exercise').waitFor();
    expect(holds(asked, fetchedLater.exercises)).toBe(true);
    expect(complaints).toEqual([]);
  });

  test('shows its words, its figure and its steps without a script', async () => {
    const { page } = await openPage(browser, path, { javaScriptEnabled: false });
    expect(await page.locator('.sl-markdown-content > p').count()).toBeGreaterThan(3);
    expect(await page.locator('.lesson svg').first().isVisible()).toBe(true);
    expect(await page.locator('.lesson .played-answer p').first().isVisible()).toBe(true);
    expect(await page.locator('.lesson .working-line math').first().isVisible()).toBe(true);
    expect(await page.locator('noscript').last().textContent()).toContain('exercises need scripts');
  });

  test('passes the check of accessibility with every working and an exercise open, and is not too wide for a phone', async () => {
    const { page } = await openPage(browser, path, { viewport: { width: 360, height: 740 } });
    await page.locator('.lesson details').evaluateAll((all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true;
    });
    await page.getByRole('button', { name: 'Begin the exercises' }).click();
    await page.getByRole('button', { name: 'Hint' }).click();
    await page.getByRole('button', { name: 'Check' }).click();
    await page.getByRole('button', { name: 'Show the worked answer' }).click();
    await page.locator('.exercise .working-line').first().waitFor();
    expect(await violationsOf(page)).toEqual([]);
    await page.evaluate(() => {
      document.documentElement.dataset.theme = 'dark';
    });
    expect(await violationsOf(page, ['color-contrast']), 'dark').toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      360,
    );
  });
});

test('the steps after a slider was moved are what the package of workings writes for its values', async () => {
  const { page } = await openPage(browser, 'lessons/loading/');
  await page.locator('#loading-load').press('Home');
  for (let i = 0; i < 7; i++) await page.locator('#loading-position').press('ArrowLeft');
  expect(await page.locator('#loading-load').getAttribute('aria-valuetext')).toBe('1\u00a0kΩ');
  const circuit = {
    source: { volts: 5 },
    limiter: 0,
    sensor: { track: 5000 },
    load: { pullDown: 1000 },
  };
  const written = await writtenSteps(page, [
    explainOperatingPoint(circuit, 0.6),
    explainLoadingError(circuit),
  ]);
  await expect.poll(() => shownSteps(page)).toEqual(written);
});

/** The first exercise of the lesson on loading. */
const first = makeExercise('loading', 'easy', 1);
const asks = first.parts[0]!;

async function answer(page: Page, text: string) {
  await page.getByLabel(asks.asks).fill(text);
  await page.getByRole('button', { name: 'Check' }).click();
}

const saidOf = (page: Page) => page.locator('.asked-said').first().textContent();

test('an answer is told right, wrong with its mistake, or unreadable with what could be read', async () => {
  const { page } = await openPage(browser, 'lessons/loading/');
  await page.getByRole('button', { name: 'Begin the exercises' }).click();
  if (asks.kind !== 'quantity') throw new Error('The first exercise asks for no value.');
  const { value, wrong } = asks;
  await page.locator('.exercise').waitFor();
  expect(await page.locator('.exercise-question').textContent()).toBe(first.question);
  await page.getByRole('button', { name: 'Check' }).click();
  expect(await saidOf(page)).toContain('Nothing is written here yet');
  await answer(page, '2.5');
  expect(await saidOf(page)).toContain('has no unit');
  await answer(page, `${wrong[0]!.value.toFixed(3)} V`);
  expect(await saidOf(page)).toBe(wrong[0]!.mistake);
  expect(await page.getByRole('button', { name: 'Next' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Hint' }).click();
  expect(await page.locator('.exercise-hint').textContent()).toBe(first.hint);
  await answer(page, `${value.toFixed(3)} V`);
  expect(await saidOf(page)).toMatch(/^Right: /);
  expect(await page.getByRole('button', { name: 'Next' }).count()).toBe(1);
});

test('progress survives a reload, and begins again with other numbers', async () => {
  const visitor = await newVisitor(browser);
  const { page } = await openPageOf(visitor, 'lessons/loading/');
  await page.getByRole('button', { name: 'Begin the exercises' }).click();
  await page.getByRole('button', { name: 'Show the worked answer' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  const second = makeExercise('meter-loading', 'easy', 2).question;
  await expect.poll(() => page.locator('.exercise-question').textContent()).toBe(second);
  await page.reload();
  await page.getByRole('button', { name: 'Go on with the exercises' }).click();
  expect(await page.locator('.exercises-progress').textContent()).toBe('1 of 3 are done.');
  expect(await page.locator('.exercise-question').textContent()).toBe(second);
  await page.getByRole('button', { name: 'Begin again' }).click();
  const other = makeExercise('loading', 'easy', 11).question;
  await expect.poll(() => page.locator('.exercise-question').textContent()).toBe(other);
  expect(other).not.toBe(first.question);
});

test('where the browser keeps nothing the exercises work, and that is told', async () => {
  const visitor = await newVisitor(browser);
  await visitor.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('closed', 'SecurityError');
      },
    });
  });
  const { page } = await openPageOf(visitor, 'lessons/loading/');
  await page.getByRole('button', { name: 'Begin the exercises' }).click();
  await page.getByRole('button', { name: 'Show the worked answer' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  expect(await page.locator('.exercises-notice').textContent()).toContain('keeps nothing');
  expect(await page.locator('.exercises-progress').textContent()).toBe('1 of 3 are done.');
});

describe('the sheet', () => {
  const open = async (search: string) => {
    const { page, complaints } = await openPage(browser, `lessons/sheet/${search}`);
    await page.locator('.sheet-answers').waitFor();
    const texts = (list: string) => page.locator(`${list} > ol > li`).allTextContents();
    return {
      page,
      complaints,
      exercises: await texts('.sheet-exercises'),
      answers: await texts('.sheet-answers'),
    };
  };

  test('has 20 exercises, no two alike, with 20 answers; the same link gives the same, another another', async () => {
    const link = '?seed=7&level=medium&topics=loading,limiter';
    const one = await open(link);
    expect(one.exercises).toHaveLength(20);
    expect(one.answers).toHaveLength(20);
    expect(new Set(one.exercises).size).toBe(20);
    const again = await open(link);
    expect([again.exercises, again.answers]).toEqual([one.exercises, one.answers]);
    const other = await open(link.replace('7', '8'));
    expect(other.exercises).not.toEqual(one.exercises);
    expect(one.complaints).toEqual([]);
  });

  test('names in its address what is chosen, and says what in one can’t be read', async () => {
    const { page } = await open('?seed=x&level=odd&topics=loading,soup');
    const said = await page.locator('.sheet [role=status] p').allTextContents();
    expect(said).toHaveLength(3);
    expect(said[0]).toContain('whole number from 1 to 999999');
    await page.getByLabel('Number of the sheet').fill('12');
    await page.getByLabel('Level').selectOption('hard');
    await page.getByLabel('A thermistor').check();
    await page.getByRole('button', { name: 'Make the sheet' }).click();
    await expect.poll(() => page.url()).toContain('?seed=12&level=hard&topics=loading,thermistor');
    await page.getByRole('heading', { name: 'Exercises, sheet 12, hard' }).waitFor();
    expect(await page.locator('.sheet [role=status] p').count()).toBe(0);
  });

  test('offers every topic that exercises have', () => {
    expect(Object.keys(sheetWords.topicLabels)).toEqual([...exerciseTopics]);
  });

  test('prints exercises on one sheet of A4 and answers on another, both sides of each, and nothing else', async () => {
    const { page } = await open('');
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(4);
    expect(pdf).toMatch(/\/MediaBox\s*\[0 0 59[45]\S* 84[12]/);
    await page.emulateMedia({ media: 'print' });
    const shown = await page
      .locator('button, nav, header, footer, .sheet form')
      .evaluateAll((all) =>
        all.filter((one) => one.checkVisibility() && one.getClientRects().length > 0),
      );
    expect(shown).toEqual([]);
    const starts = await page
      .locator('.sheet-answers')
      .evaluate((answers) => getComputedStyle(answers).breakBefore);
    expect(starts).toBe('page');
  });

  test('passes the check of accessibility with drawn sweeps on it', async () => {
    const { page } = await open('?seed=3&level=hard&topics=trace,windows');
    expect(await page.locator('.sheet-exercises svg').count()).toBe(10);
    expect(await violationsOf(page)).toEqual([]);
  });
});
