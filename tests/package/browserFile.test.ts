import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { packageFolders, readManifest } from './tarballs.js';
import { unpackedFolder } from './unpacked.js';

/** They speak with servers as no page can. */
const serversOnly: readonly string[] = ['@truesweep/queue'];
const libraries = packageFolders
  .map((folder) => readManifest(folder))
  .filter(({ name, exports }) => '.' in exports && !serversOnly.includes(name))
  .map(({ name }) => name);
const fileOf = (name: string) => join(unpackedFolder(name), 'dist', 'browser.min.js');
const load = (name: string) => import(/* @vite-ignore */ pathToFileURL(fileOf(name)).href);

/** The modules that a file imports, by what is written. */
const imported = (name: string) =>
  [
    ...readFileSync(fileOf(name), 'utf8').matchAll(/(?:^|[;}])import(?:[^;"']*from)?"([^"]+)"/g),
  ].map(([, from]) => from!);

describe.each(libraries)('%s without a bundler', (name) => {
  test('is one module that fetches nothing but truesweep’s own beside it', async () => {
    const others = new Set(imported(name));
    for (const other of others) expect(other).toMatch(/^\.\.\/\.\.\/\w+\/dist\/browser\.min\.js$/);
    expect(Object.keys(await load(name)).length).toBeGreaterThan(0);
  });
});

test('each does its work, and an error of one is an error of all', async () => {
  const [core, recordings, jobs, wording, drawings, report, explain] = await Promise.all(
    ['core', 'recordings', 'jobs', 'wording', 'drawings', 'report', 'explain'].map((name) =>
      load(`@truesweep/${name}`),
    ),
  );
  const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const { sweep } = recordings.readDelimited('time (s),wiper (V)\n0,0\n1,0\n2,0\n', {});
  const { verdict } = core.scoreSweep(sweep, core.expectation(circuit, {}));
  expect(wording.verdictLabels[verdict]).toBeTypeOf('string');
  expect(drawings.curveSvg({ id: 'c', curve: core.expectedCurve(circuit) })).toMatch(/^<svg /);
  const working = explain.explainOperatingPoint(circuit, 0.5, 'thevenin');
  expect(explain.workingText(working).join('\n')).toContain('2.083');
  const job = jobs.readJob(
    JSON.stringify({
      version: 3,
      title: 'Spare sensor',
      sensor: { kind: 'potentiometer', name: 'Sensor', track: '5 kΩ' },
      hookUp: { source: { volts: '5 V' }, limiter: '1 kΩ' },
      instrument: { name: 'Logger', inputResistance: '10 MΩ' },
    }),
  );
  const html = report.reportHtml({ job, writtenAt: '2026-05-04', recordings: [] });
  expect(report.readReport(html).job.title).toBe('Spare sensor');
  expect(() => recordings.readDelimited('', {})).toThrow(core.InputError);
  expect(() => jobs.readJob('{}')).toThrow(core.InputError);
});
