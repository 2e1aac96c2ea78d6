import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-readings-'));
const at = (name: string) => join(folder, name);
afterAll(() => rmSync(folder, { recursive: true }));

const truesweep = (...args: string[]) => runTruesweep(args);

const job = (name: string) => ['--job', `examples/${name}.job.json`];
const flat = (text: string) => text.replaceAll(/\s+/g, ' ');

describe('readings', () => {
  test.each([
    ['coolant-sensor', 'PASS', 0],
    ['manifold-sensor', 'PASS', 0],
    ['lean-switch', 'FAIL', 11],
    ['crank-sensor', 'PASS', 0],
  ])('%s: %s, by readings and by score alike', async (name, verdict, code) => {
    const told = await truesweep('readings', ...job(name), '--exit-by-verdict');
    expect(told.out).toContain(`  ${verdict}: `);
    expect(told.code).toBe(code);
    const scored = await truesweep('score', ...job(name), '--exit-by-verdict');
    expect(scored).toEqual(told);
  });

  test('typed in place of those of the job', async () => {
    const { out } = await truesweep(
      ...['readings', ...job('coolant-sensor'), '--thermometer', '0.3 K'],
      ...['ice=6.24k', '21.5 °C=2.41 kΩ', 'boiling=184'],
    );
    expect(out).toContain('PASS');
    expect(out).toContain('Resistance at 21.5 °C');
    const hot = await truesweep(
      ...[
        'readings',
        ...job('coolant-sensor'),
        '--thermometer',
        '0.3 K',
        'ice=6.24k',
        '176 °F=420',
      ],
    );
    expect(hot.out).toContain('FAIL');
    expect(flat(hot.out)).toContain('Resistance at 80.0 °C: 420 ±');
  });

  test('a break, by its over-range', async () => {
    const { out } = await truesweep(
      'readings',
      ...job('crank-sensor'),
      '--thermometer',
      '2K',
      '20 °C=OL',
    );
    expect(flat(out)).toContain('over range is outside 765 to 935 Ω');
    const { out: data } = await truesweep(
      ...['readings', ...job('crank-sensor'), '--thermometer', '2K', '20 °C=OL', '--json'],
    );
    expect(JSON.parse(data).judged.judgement.checks[0].measured).toBe(1e18);
  });

  test('a pressure sensor and one of two states', async () => {
    const { out } = await truesweep(
      ...['readings', ...job('manifold-sensor'), '--supply', '5.02V', '--meter', '4mV'],
      ...['--gauge', '0.4kPa', 'open=4.03V', '10 inHg vacuum=2.53V', '40 kPa absolute=1.31V'],
    );
    expect(out).toContain('PASS');
    const lean = await truesweep('readings', ...job('lean-switch'), 'rest=0.98V', 'key cycled=1V');
    expect(lean.out).toContain('INCONCLUSIVE');
    expect(lean.out).toContain('Read it operated.');
  });

  test.each([
    [['coolant-sensor', '21.5 °C=2.41k'], /temperatureUncertainty is missing.*\(missing\)/],
    [['coolant-sensor', '21.5=2.41k'], /no unit.*\(no-unit\)/],
    [['coolant-sensor', 'warm'], /“warm” is no reading.*such as.*\(not-a-reading\)/],
    [
      ['manifold-sensor', '10 inHg=2V', '--supply', '5'],
      /gauge or absolute.*\(gauge-or-absolute\)/,
    ],
    [['manifold-sensor', '10 inHg vacuum=2V', '--supply', '5'], /portUncertainty is missing/],
    [['manifold-sensor', 'open=4V'], /--supply is missing.*\(missing\)/],
    [['lean-switch', 'tilted=4V'], /“tilted” is no state.*\(unknown-choice\)/],
    [['crank-sensor', '20 °C=900'], /--thermometer is missing.*\(missing\)/],
    [['outboard-sensor', 'open=4V'], /judged by recorded sweeps: use score.*\(unexpected\)/],
  ] as const)('%j is refused', async ([name, ...typed], sentence) => {
    const { code, err, out } = await truesweep('readings', ...job(name), ...typed);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(sentence);
  });

  test('files beside such a job are refused, and such a job by commands of sweeps', async () => {
    const named = await truesweep('score', 'a.csv', ...job('crank-sensor'));
    expect(named.err).toMatch(/readings stand in the job.*\(unexpected\)/);
    for (const command of ['plan', 'instruments', 'simulate']) {
      const { err, code } = await truesweep(command, ...job('coolant-sensor'));
      expect(code, command).toBe(2);
      expect(err, command).toMatch(/only a potentiometer has a sweep.*\(not-a-potentiometer\)/);
    }
  });
});

describe('expect', () => {
  test.each([
    ['coolant-sensor', /20\.0 °C {2}2\.30 to 2\.80 kΩ/],
    ['manifold-sensor', /open {2}100\.9 kPa {4}3\.93 to 4\.10 V/],
    ['lean-switch', /Operated the other way {8}3\.60 to 4\.40 V/],
    ['crank-sensor', /20 °C {5}765 to 935 Ω/],
  ])('%s', async (name, row) => {
    expect((await truesweep('expect', ...job(name))).out).toMatch(row);
    const { out } = await truesweep('expect', ...job(name), '--json');
    expect(JSON.parse(out).expected.kind).toBe(
      JSON.parse(readFileSync(`examples/${name}.job.json`, 'utf8')).sensor.kind,
    );
  });
});

test('expect of a two-state sensor tells the angles that it must change between', async () => {
  const lean = JSON.parse(readFileSync('examples/lean-switch.job.json', 'utf8'));
  const sensor = { ...lean.sensor, changesBetween: { low: 55, high: 75 } };
  writeFileSync(at('angled.job.json'), JSON.stringify({ ...lean, sensor }));
  const { out, err } = await truesweep('expect', '--job', at('angled.job.json'));
  expect(err).toBe('');
  expect(flat(out)).toContain('Angle at which it changes 55.0 to 75.0 °');
});

describe('a recorded pump-down', () => {
  const manifold = JSON.parse(readFileSync('examples/manifold-sensor.job.json', 'utf8'));
  beforeAll(() => {
    const rows = Array.from({ length: 900 }, (_, i) => {
      const t = i / 50;
      const volts = t < 6 ? 4.03 : t < 12 ? 2.53 : 1.31;
      return `${t.toFixed(2)},${(volts + 0.001 * (i % 3)).toFixed(4)}`;
    });
    writeFileSync(at('pump.csv'), `t (s),U (V)\n${rows.join('\n')}\n`);
    const recordings = [
      {
        file: 'pump.csv',
        ports: ['open', '10 inHg vacuum', '18 inHg vacuum'],
        portUncertainty: '0.4 kPa',
        supply: '5.02 V',
        uncertainty: '4 mV',
      },
    ];
    writeFileSync(at('pump.job.json'), JSON.stringify({ ...manifold, readings: [], recordings }));
  });

  test('is judged step by step', async () => {
    const { out, err } = await truesweep('score', '--job', at('pump.job.json'));
    expect(err).toBe('');
    expect(out).toContain('PASS');
    expect(flat(out)).toContain('Held from 0.00 to 5.98 s at 4.03 V');
  });

  test.each([
    ['of few samples nothing is said', 4, 0, /too few samples to know how it drifts/, /leak |37 %/],
    ['of noise no more than that', 50, 0, /No leak stands out of the noise/, /37 %/],
    ['a leak is told', 50, 0.005, /falls to 37 % in .* wait before timing/, /No leak/],
  ])('%s', async (_, perStep, leak, said, unsaid) => {
    const rows = Array.from({ length: 3 * perStep }, (_, i) => {
      const t = (6 * i) / perStep;
      const volts = t < 6 ? 4.03 : t < 12 ? 2.53 : 1.31 + leak * (t - 12);
      return `${t.toFixed(2)},${(volts + 0.0005 * (i % 2)).toFixed(4)}`;
    });
    writeFileSync(at('leak.csv'), `t (s),U (V)\n${rows.join('\n')}\n`);
    const job = JSON.parse(readFileSync(at('pump.job.json'), 'utf8'));
    job.recordings[0].file = 'leak.csv';
    writeFileSync(at('leak.job.json'), JSON.stringify(job));
    const { out, err } = await truesweep('score', '--job', at('leak.job.json'));
    expect(err).toBe('');
    expect(flat(out)).toMatch(said);
    expect(flat(out)).not.toMatch(unsaid);
  });

  test.each([[[]], [['--markdown']]])('is reported, %j', async (more) => {
    const file = at(`pump${more.length}.out`);
    const { code, err } = await truesweep(
      'report',
      '--job',
      at('pump.job.json'),
      '--out',
      file,
      ...more,
    );
    expect([code, err]).toEqual([0, '']);
    const text = readFileSync(file, 'utf8');
    expect(text).toContain('PASS');
    if (more.length === 0) {
      expect(text.match(/<svg/g)).toHaveLength(2);
      expect(text).not.toMatch(/<[^>]* style=|<script(?! type="application\/json")/);
    }
  });

  test('a report does not write over its job or recording', async () => {
    for (const name of ['pump.job.json', 'pump.csv']) {
      const { err } = await truesweep(
        ...['report', '--job', at('pump.job.json'), '--out', at(name), '--overwrite'],
      );
      expect(err, name).toContain('(output-is-input)');
    }
  });
});

test('a recorded switch: how it bounced', async () => {
  const lean = JSON.parse(readFileSync('examples/lean-switch.job.json', 'utf8'));
  const rows = Array.from({ length: 400 }, (_, i) => {
    const isUp = i >= 200 && i !== 202 && i !== 204;
    return `${(i / 1000).toFixed(3)},${isUp ? 4 : 1}`;
  });
  writeFileSync(at('switch.csv'), `t (s),U (V)\n${rows.join('\n')}\n`);
  const recordings = [{ file: 'switch.csv', low: '1.5 V', high: '3.5 V' }];
  writeFileSync(at('switch.job.json'), JSON.stringify({ ...lean, recordings }));
  const { out, err } = await truesweep('score', '--job', at('switch.job.json'));
  expect(err).toBe('');
  expect(flat(out)).toContain('At 200 ms it went up; it bounced for 5.00 ms and went back 2 times');
});

describe('reports of single readings', () => {
  test.each(['coolant-sensor', 'manifold-sensor', 'lean-switch', 'crank-sensor'])(
    '%s',
    async (name) => {
      const file = at(`${name}.html`);
      const { err } = await truesweep('report', ...job(name), '--out', file);
      expect(err).toBe('');
      const text = readFileSync(file, 'utf8');
      expect(text).toMatch(/PASS|FAIL/);
      expect(text).toContain('id="truesweep-job"');
      expect(text.includes('<svg')).toBe(/coolant|manifold/.test(name));
      const opened = await truesweep('reopen', file);
      expect(opened.out).toBe((await truesweep('readings', ...job(name))).out);
      expect((await truesweep('reopen', file, 'a.csv')).err).toContain('(unexpected)');
    },
  );
});
