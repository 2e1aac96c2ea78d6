import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

const truesweep = (...args: string[]) => runTruesweep(args);

const job = (name: string) => ['--job', `examples/${name}.job.json`];

test.each([
  [
    'expect',
    job('outboard-sensor'),
    ['The reading with the wiper at 88\u00a0% of the track', '   V = 3.666\u00a0V'],
  ],
  [
    'plan',
    [...job('outboard-sensor'), '--wiper-current', '5mA'],
    ['The limiting resistor', 'Smallest limiting resistor that holds the current'],
  ],
  [
    'instruments',
    [...job('outboard-sensor'), '--every', '2ms'],
    ['Bench logger, first channel: the chance that it shows a dropout of 20\u00a0ms'],
  ],
  [
    'set-closed',
    ['--reading', '.62V', '--wanted', '.5V', '--turned', '2°', '--then', '.7V'],
    ['   α = −3.000°'],
  ],
  ['readings', job('crank-sensor'), ['beside its limits', 'The check says: conforms.']],
  ['score', job('crank-sensor'), ['beside its limits', 'The check says: conforms.']],
  [
    'score',
    ['examples/recordings/worn.csv', ...job('outboard-sensor')],
    [
      'The smallest departure that counts as visible in this recording',
      'Closed reading, beside its limits',
      'A dropout at 5.92\u00a0% of the travel, after',
      'Departures at one place, 5.88\u00a0% of the travel',
      'What speaks for track, connection and interference',
    ],
  ],
  ['expect', job('coolant-sensor'), ['No working is written for these entries']],
] as const)('%s with --working shows how its numbers come about', async (name, args, lines) => {
  const bare = await truesweep(name, ...args);
  expect(bare.code).toBe(0);
  const { code, out } = await truesweep(name, ...args, '--working');
  expect(code).toBe(0);
  const more = out.replace(bare.out, '');
  for (const line of lines) {
    expect(more).toContain(line);
    expect(bare.out).not.toContain(line);
  }
  // What a sentence says is broken between words; a line of a formula never.
  const wide = more.split('\n').filter((line) => line.length > 80);
  expect(wide.filter((line) => !line.includes(' = '))).toEqual([]);
});

test.each([
  ['a sweep', [...job('outboard-sensor'), 'examples/recordings/worn.csv'], 'track, connection'],
  ['single readings', job('crank-sensor'), 'beside its limits'],
] as const)('a report of %s takes them as an appendix when asked to', async (_, args, part) => {
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-'));
  const written = async (...more: readonly string[]) => {
    const out = join(folder, `${more.join('')}.report`);
    const { code, err } = await truesweep('report', ...args, '--out', out, ...more);
    expect(code, err).toBe(0);
    return readFileSync(out, 'utf8');
  };
  const heading = 'Appendix: how the numbers come about';
  const html = await written('--working');
  const [, appendix = ''] = html.split(`<h2>${heading}</h2>`);
  expect(appendix).toContain(part);
  expect(appendix).toContain('<math');
  const markdown = await written('--working', '--markdown');
  expect(markdown.split(`## ${heading}`)[1]).toContain(part);
  expect(await written()).not.toContain(heading);
  rmSync(folder, { recursive: true });
});

test('workings are no data', async () => {
  const { code, err } = await truesweep('expect', ...job('outboard-sensor'), '--working', '--json');
  expect(code).not.toBe(0);
  expect(err).toContain('--working');
});
