import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { soak } from '../counts.js';
import { newVisitor, openPage, openPageOf, violationsOf } from './openPage.js';

let browser: Browser;
/** Who looks at every page, with a service worker that is fetched once: each page with a script of ours asks for it under its own policy. */
let visitor: BrowserContext;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
  visitor = await newVisitor(browser, { colorScheme: 'light', serviceWorkers: 'allow' });
});

afterAll(() => browser.close());

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));
const files = readdirSync(built, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('index.html'));

const paths = files.map((path) => path.slice(0, -'index.html'.length)).sort();
/** Pages that one renderer writes from doc comments: of them every fifth is looked at; a soak looks at all. */
const written = paths.filter((path) => /^reference\/./.test(path));
const looked = paths.filter(
  (path) => soak > 1 || !written.includes(path) || written.indexOf(path) % 5 === 0,
);

test.each(looked)(
  '%s: below the sub-path, from no other host, no error, accessible, never too wide',
  async (path) => {
    const site = inject('site');
    const { page, asked, complaints } = await openPageOf(visitor, path);
    expect(await violationsOf(page)).toEqual([]);
    await page.evaluate(() => {
      document.documentElement.dataset.theme = 'dark';
    });
    expect(await violationsOf(page, ['color-contrast']), 'dark').toEqual([]);
    for (const width of [320, 360, 3840]) {
      await page.setViewportSize({ width, height: 740 });
      const taken = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(taken, `${width} wide`).toBeLessThanOrEqual(width);
    }
    expect(asked.filter((url) => !url.startsWith(site) && !url.startsWith('data:'))).toEqual([]);
    // A file that is missing and a breach of the page's own policy are errors of the console too.
    expect(complaints).toEqual([]);
    await page.close();
  },
);

test('no link of the site leads nowhere, to a page or to a place in it', () => {
  const base = 'http://site/truesweep/';
  const pages = new Map(
    files.map((path) => {
      const html = readFileSync(join(built, path), 'utf8');
      const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id!);
      return [base + path.slice(0, -'index.html'.length), { html, ids: new Set(ids) }];
    }),
  );
  const broken: string[] = [];
  let links = 0;
  for (const [address, { html }] of pages) {
    for (const [, href] of html.matchAll(/<(?:a|link)\b[^>]*?\shref="([^"]+)"/g)) {
      if (href!.startsWith('data:')) continue;
      const link = new URL(href!.replaceAll('&amp;', '&'), address);
      const place = decodeURIComponent(link.hash.slice(1));
      link.hash = '';
      link.search = '';
      const page = pages.get(link.href);
      const file = join(built, decodeURIComponent(link.href.slice(base.length)));
      const leads = page
        ? ['', '_top', 'v1'].includes(place) || page.ids.has(place)
        : link.href.startsWith(base) && existsSync(file) && statSync(file).isFile();
      if (!leads) broken.push(`${address}: ${href}`);
      links++;
    }
  }
  expect([...new Set(broken)]).toEqual([]);
  expect(pages.size).toBeGreaterThan(60);
  expect(links).toBeGreaterThan(4000);
});

test('formulas lead to the calculators and explanations that use them, and those lead back', () => {
  const linksOf = (path: string) => {
    const html = readFileSync(join(built, path, 'index.html'), 'utf8');
    // Of a page of formulas each formula by itself; of another what stands in its content.
    const sections = [
      ...html.matchAll(/<section class="formula" id="([^"]*)">([\s\S]*?)<\/section>/g),
    ];
    const parts =
      sections.length > 0
        ? sections.map(([, id, text]) => [`${path}#${id}`, text!])
        : [[path, html]];
    return parts.map(([from, text]) => ({
      from: from!,
      to: [...text!.matchAll(/href="\/truesweep\/([^"]*)"/g)].map(([, href]) => href!),
    }));
  };
  const pathsIn = (folder: string) =>
    files
      .filter((path) => path.startsWith(`${folder}/`) && path !== `${folder}/index.html`)
      .map((path) => path.slice(0, -'index.html'.length));
  const formulas = pathsIn('formulas').flatMap(linksOf);
  const lessons = pathsIn('lessons').filter((path) => path !== 'lessons/sheet/');
  const users = [...pathsIn('calculators'), ...pathsIn('concepts'), ...lessons].flatMap(linksOf);
  const oneWay: string[] = [];
  for (const formula of formulas)
    for (const path of formula.to.filter((to) => /^(calculators|concepts|lessons)\/./.test(to)))
      if (!users.find(({ from }) => from === path)?.to.includes(formula.from))
        oneWay.push(`${path} has no link to ${formula.from}`);
  for (const user of users) {
    const behind = user.to.filter((to) => /^formulas\/\w+\/#/.test(to));
    expect(behind.length, `${user.from} names its formulas`).toBeGreaterThan(0);
    for (const formula of behind)
      if (!formulas.find(({ from }) => from === formula)?.to.includes(user.from))
        oneWay.push(`${formula} has no link to ${user.from}`);
  }
  expect(oneWay).toEqual([]);
  expect(formulas.length).toBeGreaterThan(25);
});

test('in forced colours verdict, fields and drawings keep their borders and lines', async () => {
  const { page } = await openPage(browser, 'calculators/check-a-sweep/', {
    forcedColors: 'active',
  });
  const styles = await page.evaluate(() => {
    const styleOf = (selector: string) => getComputedStyle(document.querySelector(selector)!);
    return {
      verdict: styleOf('.first-judged .verdict-card').borderTopWidth,
      button: styleOf('.job-entries button').borderTopWidth,
      line: styleOf('.judged .trace-drawing').color,
      text: styleOf('.judged p').color,
      paper: styleOf('body').backgroundColor,
    };
  });
  expect(styles.verdict).toBe('5px');
  expect(styles.button).toBe('2px');
  expect(styles.line).toBe(styles.text);
  expect(styles.line).not.toBe(styles.paper);
});

test('each export of each entry is documented in one place at length, and the entry’s page leads there', () => {
  const lists = new URL('../package/exports/', import.meta.url);
  const astray: string[] = [];
  for (const list of readdirSync(lists)) {
    const entry = list.replace(/\.txt$/, '').replace('.', '/');
    const path = `reference/${entry}/index.html`;
    const html = readFileSync(join(built, path), 'utf8');
    for (const line of readFileSync(new URL(list, lists), 'utf8').trim().split('\n')) {
      const name = line.replace(/^type /, '');
      const places = placesOf(name, entry.split('/')[0]!);
      const isHere = places.includes(path);
      const leads = new RegExp(`href="[^"]*#${name}"`).test(html);
      if (places.length !== 1 || !(isHere || leads)) astray.push(`${entry}: ${name}`);
    }
  }
  expect(astray).toEqual([]);
});

/** The pages of a package's reference that document a name. */
function placesOf(name: string, library: string): readonly string[] {
  return files
    .filter((path) => path.startsWith(`reference/${library}/`))
    .filter((path) => readFileSync(join(built, path), 'utf8').includes(` id="${name}"`));
}
