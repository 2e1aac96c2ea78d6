import { InputError } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { exampleReport } from '../../../tests/exampleReport.js';
import { readReport } from './readReport.js';
import { recheckReport } from './recheckReport.js';
import { reportHtml } from './reportHtml.js';

const written = exampleReport(['too-slow.csv']);
const html = reportHtml({
  ...written,
  recordings: written.recordings.map((one) => ({
    ...one,
    recorder: {
      resolution: 0.001,
      uncertainty: 0.002,
      range: { low: -1, high: 6 },
      coupling: 'dc',
      sampling: 'interpolated',
      sampledEvery: 0.05,
      before: { source: 5, zero: 0 },
      after: { source: 5, zero: 0 },
    },
    sweep: { ...one.sweep, stretches: [{ kind: 'harness-flexed', start: 0.2, end: 0.4 }] },
  })),
});
const from = html.lastIndexOf('<script');
const data = JSON.parse(html.slice(html.indexOf('>', from) + 1, html.lastIndexOf('</script>')));

type Path = readonly (string | number)[];

/** The paths of everything that a value holds; of a list the first entry stands for all. */
function pathsIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const keys = Array.isArray(value) ? [0] : Object.keys(value);
  const held = value as Readonly<Record<string, unknown>>;
  return [path, ...keys.flatMap((key) => pathsIn(held[key], [...path, key]))];
}

function changedAt(value: unknown, [key, ...rest]: Path, to: unknown): unknown {
  if (key === undefined) return to;
  const held = (value ?? {}) as Readonly<Record<string, unknown>>;
  const changed = changedAt(held[key], rest, to);
  if (Array.isArray(value)) return value.map((one, i) => (i === key ? changed : one));
  return { ...held, [key]: changed };
}

const page = (content: unknown) =>
  `<script type="application/json" id="truesweep-report">${JSON.stringify(content)}</script>`;

const wrong = [undefined, null, true, -1, 1.5, 1e308, '', 'constructor', [], [null], {}];

/** What opening comes to: what is shown, or the error that refuses it. */
function opened(content: unknown): string {
  try {
    const report = readReport(page(content), 'old.html');
    const { title } = report.job;
    const rechecks = recheckReport(report).map(
      ({ name, stated, again }) => `${name} ${stated} ${again ?? 'not again'}`,
    );
    return `${title} ${report.writtenAt} ${rechecks.join()}`;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.message;
  }
}

test('the report opens as it was written', () => {
  expect(opened(data)).toMatch(/too-slow\.csv inconclusive inconclusive$/);
});

describe('a report that was damaged is refused or opened, never a failure of the program', () => {
  const recheckedBy = pathsIn(data).filter((path) => path[2] !== 'score' || path.length < 5);

  test.each(recheckedBy.map((path) => [path.join('.'), path] as const))('%s', (_, path) => {
    for (const to of wrong) {
      const said = opened(changedAt(data, path, to));
      expect(said, JSON.stringify(to)).not.toMatch(/undefined|NaN|\[object|constructor c/);
    }
  });

  test('cut anywhere', () => {
    for (let i = 1; i < 200; i++) {
      const cut = html.slice(0, Math.floor((html.length * i) / 200));
      expect(() => readReport(cut, 'old.html')).toThrow(InputError);
    }
  });

  test('nested without end', () => {
    const deep = page(0).replace('>0<', `>${'['.repeat(200_000)}${']'.repeat(200_000)}<`);
    expect(() => readReport(deep)).toThrow(expect.objectContaining({ code: 'no-report' }));
  });

  test('is told where it is damaged', () => {
    const broken = changedAt(data, ['recordings', 0, 'envelope', 'low'], 'x');
    expect(opened(broken)).toContain('recordings[0].envelope.low');
  });

  test.each([0, -1, 1.5, '1', null])('a version %j is none', (version) => {
    expect(() => readReport(page({ ...data, version }))).toThrow(
      expect.objectContaining({ code: 'no-report' }),
    );
  });
});

describe('texts that look like the stored data', () => {
  test.each([
    'id="truesweep-report"',
    '<script type="application/json" id="truesweep-report">{}</script>',
    '</script><script id="truesweep-report">',
    '&lt;script id="truesweep-report"&gt;',
    '\ud83d half a character \udca9',
    '$& $` $1',
  ])('%j is a title like any other', (title) => {
    const text = reportHtml({ ...written, job: { ...written.job, title, notes: title } });
    expect(readReport(text).job).toMatchObject({ title, notes: title });
    const bytes = new TextEncoder().encode(text);
    expect(new TextDecoder('utf-8', { fatal: true }).decode(bytes)).toBe(text);
    expect(readReport(new TextDecoder().decode(bytes)).job.title).toBe(title);
  });
});
