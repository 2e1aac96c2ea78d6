import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));
const files = readdirSync(built, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => statSync(join(built, path)).isFile());
const pages = files.filter((path) => path.endsWith('.html'));

/** In KB of 1,024 bytes. */
const sizeOf = (path: string) => statSync(join(built, path)).size / 1024;

/** What a page's HTML may weigh, KB, by its kind: the first whose pattern it meets. */
const bounds: readonly (readonly [kind: string, pattern: RegExp, most: number, goal: number])[] = [
  ['the start page', /^index\.html$/, 30, 30],
  ['the page with the demo judged in it', /^calculators\/check-a-sweep\//, 72, 60],
  ['the gallery', /^gallery\//, 229, 100],
  ['a form', /^(calculators\/.|guided-way)/, 50, 50],
  ['the reference', /^reference\//, 141, 100],
  ['a lesson', /^lessons\//, 67, 50],
  ['documentation', /./, 56, 50],
];

const kindOf = (path: string) => bounds.find(([, pattern]) => pattern.test(path))![0];

test.each(bounds)(
  '%s: each page of it, %s, has at most %d KB of HTML (goal: %d KB)',
  (kind, _, most, goal) => {
    const sizes = pages
      .filter((path) => kindOf(path) === kind)
      .map((path) => [path, sizeOf(path)] as const)
      .sort(([, one], [, other]) => other - one);
    const [largest] = sizes;
    console.log(
      `${kind}: ${sizes.length} pages, largest ${largest?.[0]} of ${largest?.[1].toFixed(1)} KB (holds: at most ${most}, goal: at most ${goal})`,
    );
    expect(sizes.length).toBeGreaterThan(0);
    expect(sizes.filter(([, size]) => size > most)).toEqual([]);
  },
);

test('the whole site is no larger than it holds', () => {
  const megabytes = files.reduce((sum, path) => sum + sizeOf(path), 0) / 1024;
  console.log(
    `the site: ${files.length} files, ${megabytes.toFixed(1)} MB (holds: at most 7.8, goal: at most 25)`,
  );
  expect(megabytes).toBeLessThanOrEqual(7.8);
});

test('a page lists the pages of its own group of the sidebar, and of the others the front only', () => {
  for (const path of pages.filter(
    (page) => !['404.html', 'search/index.html', 'index.html'].includes(page),
  )) {
    const html = readFileSync(join(built, path), 'utf8');
    const sidebar = /<nav\b[^>]*class="sidebar[\s\S]*?<\/nav>/.exec(html)?.[0] ?? '';
    const current = /<a href="([^"]*)" aria-current="page"/.exec(sidebar)?.[1];
    expect(current, path).toBe(`/truesweep/${path.replace(/index\.html$/, '')}`);
    expect(sidebar.match(/<details/g)?.length ?? 0, path).toBeLessThanOrEqual(1);
  }
});
