import { copyFileSync, existsSync, rmSync } from 'node:fs';
import { copyFile, link, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { type Score, simulateSweep } from '@truesweep/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';
import { run } from './run.js';

let folder: string;
const at = (name: string) => join(folder, name);

const benchJob = {
  version: 3,
  title: 'Spare sensor',
  sensor: {
    kind: 'potentiometer',
    name: 'Outboard throttle sensor',
    track: '5k',
    closedPosition: '10 %',
    openPosition: '90 %',
    tolerances: { closedPosition: '2 %', openPosition: '2 %' },
  },
  hookUp: { source: { volts: '5 V' }, limiter: '1k' },
  instrument: { name: 'Bench logger', inputResistance: '10M' },
  recordings: [
    { file: 'sound.csv' },
    { file: 'odd.txt', text: { timeColumn: 1, signalColumn: 0 } },
  ],
};

/** A recording of a sound sensor by a recorder of the given sample interval. */
function recording(interval: number): { time: Float64Array; signal: Float64Array } {
  return simulateSweep({
    circuit: {
      source: { volts: 5 },
      limiter: 1000,
      sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
      load: { pullDown: 10e6 },
    },
    movements: [
      { kind: 'hold', seconds: 0.4 },
      ...[1, 2, 3].flatMap(
        () =>
          [
            { kind: 'turn', to: 1, seconds: 1 },
            { kind: 'hold', seconds: 0.4 },
            { kind: 'turn', to: 0, seconds: 1 },
            { kind: 'hold', seconds: 0.4 },
          ] as const,
      ),
    ],
    recorder: { interval, noise: 0.001, resolution: 0.001 },
    seed: 7,
  }).sweep;
}

/** The samples of a sound file of one channel at 8 kHz, 16 bits, so many volts at full scale. */
function soundFile(signal: Float64Array, volts: number): Uint8Array {
  const bytes = new Uint8Array(44 + 2 * signal.length);
  const view = new DataView(bytes.buffer);
  const size = 2 * signal.length;
  const words = [
    0x46464952,
    36 + size,
    0x45564157,
    0x20746d66,
    16,
    0x10001,
    8000,
    16_000,
    0x100002,
  ];
  for (const [i, word] of [...words, 0x61746164, size].entries()) view.setUint32(4 * i, word, true);
  for (const [i, one] of signal.entries()) {
    view.setInt16(44 + 2 * i, Math.round((one / volts) * 32_768), true);
  }
  return bytes;
}

const rowsOf = (interval: number, row: (time: string, signal: string) => string) => {
  const { time, signal } = recording(interval);
  return Array.from(time, (t, i) => `${row(t.toFixed(3), signal[i]!.toFixed(3))}\n`).join('');
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-cli-'));
  await writeFile(at('job.json'), JSON.stringify(benchJob));
  await writeFile(at('bare.json'), JSON.stringify({ ...benchJob, recordings: [] }));
  await writeFile(
    at('sound.csv'),
    rowsOf(0.002, (time, signal) => `${time},${signal}`),
  );
  await writeFile(
    at('odd.txt'),
    rowsOf(0.002, (time, signal) => `${signal};${time}`),
  );
  await writeFile(
    at('slow.csv'),
    rowsOf(0.05, (time, signal) => `${time},${signal}`),
  );
  await writeFile(
    at('flat.csv'),
    rowsOf(0.002, (time) => `${time},2.500`),
  );
  await writeFile(at('backwards.csv'), '0,1\n1,1\n0.5,1\n');
  await writeFile(at('one.csv'), '0,1\n');
  await writeFile(at('empty.csv'), '');
  await writeFile(at('words.csv'), 'no numbers\nin here\n');
  await writeFile(at('binary.csv'), Uint8Array.of(0, 1, 2, 255, 0, 3));
  await writeFile(at('still.csv'), '1,1\n1,1\n1,1\n');
});
afterAll(() => rm(folder, { recursive: true }));

const truesweep = (...args: string[]) => runTruesweep(args);

const score = (...args: string[]) => truesweep('score', '--job', at('job.json'), ...args);

describe('exit codes', () => {
  test('0 when the work was done, whatever the verdict', async () => {
    for (const file of ['sound.csv', 'slow.csv', 'flat.csv']) {
      const { code, err } = await score(at(file));
      expect({ file, code, err }).toEqual({ file, code: 0, err: '' });
    }
  });

  test.each([
    [['sound.csv'], 0],
    [['flat.csv'], 11],
    [['slow.csv'], 12],
    [['sound.csv', 'slow.csv'], 12],
    [['flat.csv', 'slow.csv', 'sound.csv'], 11],
  ])('%j with --exit-by-verdict: %i', async (files, code) => {
    expect((await score('--exit-by-verdict', ...files.map(at))).code).toBe(code);
  });

  test.each([
    'backwards.csv',
    'one.csv',
    'empty.csv',
    'words.csv',
    'binary.csv',
    'missing.csv',
    'still.csv',
    '.',
  ])('2 for %s alone, with nothing printed but what was wrong', async (file) => {
    const { code, out, err } = await score(at(file), '--exit-by-verdict');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^truesweep: .*\. \([a-z-]+\)\n$/);
    expect(err).toContain(at(file));
  });

  test.each([
    [[], 'Usage'],
    [['score', 'a.csv'], '--job'],
    [['scroe'], 'scroe'],
    [['score', '--job', 'a.json', '--loud'], '--loud'],
  ])('2 for the words %j', async (args, said) => {
    const { code, out, err } = await truesweep(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(said);
  });

  test('0 for help and version', async () => {
    for (const words of [['--help'], ['score', '--help'], ['--version']]) {
      const { code, out, err } = await truesweep(...words);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).not.toBe('');
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    }
  });
});

describe('a bad file among good ones', () => {
  const files = ['sound.csv', 'words.csv', 'flat.csv', 'slow.csv'];
  const verdicts = ['PASS', 'NOT JUDGED', 'FAIL', 'INCONCLUSIVE'];

  test('has its line among the others, which are judged as they are alone', async () => {
    const { code, out, err } = await score('--short', ...files.map(at));
    const places = files.map((file, i) => out.indexOf(`${at(file)}\n  ${verdicts[i]}: `));
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const file of ['sound.csv', 'flat.csv', 'slow.csv']) {
      const alone = (await score('--short', at(file))).out;
      expect(out).toContain(alone.slice(0, alone.indexOf('\n\n')));
    }
    expect(out.match(/Before you connect or refit anything/g)).toHaveLength(1);
    expect(err).toBe(`truesweep: 1 of 4 recordings was not judged: ${at('words.csv')}.\n`);
    expect(code).toBe(2);
  });

  test('leaves with 2 whatever the verdicts of the others are, and wherever it stands', async () => {
    for (const order of [files, [...files].reverse()]) {
      expect((await score('--exit-by-verdict', ...order.map(at))).code).toBe(2);
    }
  });

  test('stands in the data with what was wrong', async () => {
    const { code, out, err } = await score('--json', ...files.map(at));
    const data = JSON.parse(out);
    expect(data.map(({ score: one }: { score?: Score }) => one?.verdict)).toEqual([
      'pass',
      undefined,
      'fail',
      'inconclusive',
    ]);
    expect(data[1]).toMatchObject({ file: at('words.csv'), refused: { code: 'no-numbers' } });
    expect(err).toContain('1 of 4 recordings was not judged');
    expect(code).toBe(2);
  });

  test('more bad ones are each told', async () => {
    const { code, out, err } = await score(at('one.csv'), at('missing.csv'));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^truesweep: .*one\.csv.*\)\ntruesweep: .*missing\.csv.*\)\n$/);
  });

  test('what the job lists is answered alike', async () => {
    const listed = { ...benchJob, recordings: [{ file: 'gone.csv' }, { file: 'sound.csv' }] };
    await writeFile(at('gone.json'), JSON.stringify(listed));
    const { code, out } = await truesweep('score', '--short', '--job', at('gone.json'));
    expect(code).toBe(2);
    expect(out).toMatch(/gone\.csv\n {2}NOT JUDGED: .*\(missing-file\)\n\n.*sound\.csv\n {2}PASS/s);
  });

  test('a report and a comparison are made of all of them or not at all', async () => {
    const out = at('partly.html');
    const job = ['--job', at('job.json')];
    const refused = await truesweep('report', ...job, at('sound.csv'), at('one.csv'), '--out', out);
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(refused.err).toContain(at('one.csv'));
    expect(existsSync(out)).toBe(false);
    expect(await truesweep('compare', ...job, at('sound.csv'), at('one.csv'))).toMatchObject({
      code: 2,
      out: '',
    });
  });
});

describe('bad jobs', () => {
  const withJob = async (text: string) => {
    await writeFile(at('bad.json'), text);
    return truesweep('score', at('sound.csv'), '--job', at('bad.json'));
  };

  test.each([
    ['a negative resistance', JSON.stringify(benchJob).replace('"limiter":"1k"', '"limiter":-5')],
    ['no supply', JSON.stringify(benchJob).replace('"volts":"5 V"', '')],
    ['a limiter that is no number', JSON.stringify(benchJob).replace('"1k"', '"NaN"')],
    ['no JSON', '{ "version": 1 '],
    ['a later version', '{ "version": 9 }'],
    ['a sensor without travel', JSON.stringify(benchJob).replace('"90 %"', '"10 %"')],
  ])('%s: 2, the file named, and nothing printed', async (_, text) => {
    const { code, out, err } = await withJob(text);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^truesweep: .*bad\.json.*\. \([a-z-]+\)\n$/);
  });

  test('a job that lists no recording needs one named', async () => {
    const { code, err } = await truesweep('score', '--job', at('bare.json'));
    expect(code).toBe(2);
    expect(err).toContain('nothing-to-score');
  });
});

describe('what is judged', () => {
  test("the job's own recordings where none is named, read as the job says", async () => {
    const { out } = await score('--json');
    const data = JSON.parse(out);
    expect(data.map(({ file }: { file: string }) => file)).toEqual([
      at('sound.csv'),
      at('odd.txt'),
    ]);
    expect(data[1].reading.columns.time.index).toBe(1);
    expect(data[1].score.verdict).toBe(data[0].score.verdict);
  });

  test('a named file is read as the job says too', async () => {
    const [{ reading }] = JSON.parse((await score('--json', at('odd.txt'))).out);
    expect(reading.columns.signal.index).toBe(0);
  });

  test('--json and the text tell the same', async () => {
    const files = [at('sound.csv'), at('slow.csv')];
    const data: { file: string; score: { verdict: string } }[] = JSON.parse(
      (await score('--json', ...files)).out,
    );
    const { out } = await score(...files);
    for (const { file, score: one } of data)
      expect(out).toContain(`${file}\n  ${one.verdict.toUpperCase()}: `);
    expect(data.map(({ score: one }) => one.verdict)).toEqual(['pass', 'inconclusive']);
  });

  test('--json-lines tells the same as --json, a line for each', async () => {
    const files = [at('sound.csv'), at('words.csv'), at('slow.csv')];
    const { code, out, err } = await score('--json-lines', ...files);
    const lines = out.split('\n');
    expect(lines.pop()).toBe('');
    const whole = await score('--json', ...files);
    expect(lines.map((line) => JSON.parse(line))).toEqual(JSON.parse(whole.out));
    expect({ code, err }).toEqual({ code: 2, err: whole.err });
  });

  test.each(['--json-lines', '--short'])('with %s each is printed as it is done', async (form) => {
    const printed: string[] = [];
    const code = await run(
      ['score', '--job', at('job.json'), form, at('sound.csv'), at('later.csv')],
      {
        width: 80,
        colour: false,
        // The second recording is there only once the first was printed.
        print: (text) => {
          if (printed.length === 0) copyFileSync(at('slow.csv'), at('later.csv'));
          printed.push(text);
        },
        printError: (text) => printed.push(text),
      },
    );
    rmSync(at('later.csv'));
    expect(printed[0]).not.toContain('later.csv');
    expect(printed[1]).toContain('later.csv');
    expect(code).toBe(0);
  });

  test('data are wanted in one form only', async () => {
    const { code, out, err } = await score('--json', '--json-lines', at('sound.csv'));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('--json');
  });

  test('the cautions close the text, once, short or not', async () => {
    for (const words of [[], ['--short']]) {
      const { out } = await score(...words, at('sound.csv'), at('slow.csv'));
      expect(out.match(/Before you connect or refit anything/g)).toHaveLength(1);
    }
  });

  test('a recording that was too slow says how fast it must be', async () => {
    expect((await score('--short', at('slow.csv'))).out).toContain('7.5\u00a0ms');
  });
});

describe('the commands around the score', () => {
  const job = () => ['--job', at('job.json')];

  test('plan refuses a rating without a unit: 5 may be A or mA', async () => {
    const { code, err } = await truesweep('plan', ...job(), '--wiper-current', '5');
    expect(code).toBe(2);
    expect(err).toContain('write “5 mA” or “5 A”');
  });

  test('plan advises on the limiter and never to leave it out', async () => {
    const { out } = await truesweep('plan', ...job(), '--wiper-current', '1mA');
    expect(out).toContain('take 4.7\u00a0kΩ');
    expect(out).toMatch(/supply and ground exchanged .*falls, not rises/);
    const { out: bare } = await truesweep('plan', ...job());
    expect(bare.replace(/\s+/g, ' ')).toContain('That is no reason to leave it out');
    expect(bare.replace(/\s+/g, ' ')).toMatch(
      /Give the ratings of the data sheet by --track-power, such as 0\.2 W, --wiper-current, such as 1 mA, and --source-current, such as 100 mA\./,
    );
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /by --track-power, such as 0\.2 W, and --source-current/,
    );
    expect(out).not.toContain('--wiper-current');
  });

  test('expect prints the windows that score judges by', async () => {
    const { out } = await truesweep('expect', ...job(), '--json');
    const { windows, curve } = JSON.parse(out);
    const { out: scored } = await score(at('sound.csv'), '--json');
    const closed = JSON.parse(scored)[0].score.checks.find(
      ({ check }: { check: string }) => check === 'closed-end',
    );
    expect([windows.closed.low, windows.closed.high]).toEqual([closed.lowLimit, closed.highLimit]);
    expect(curve).toHaveLength(11);
    expect((await truesweep('expect', ...job())).out).toContain('Closed reading must lie in');
  });

  test('compare tells what changed', async () => {
    const { out } = await truesweep('compare', ...job(), at('sound.csv'), at('flat.csv'));
    expect(out).toMatch(/Verdict: .*Pass,\s.*Fail/);
  });

  test('terminals are found from ohmmeter readings', async () => {
    const { out } = await truesweep('terminals', 'A,B=5k/5k', 'A,C=1.3k/5.3k', 'B,C=5.3k/1.3k');
    expect(out).toContain('Wiper: C. Ends of the track: A and B, 5\u00a0kΩ between them.');
    expect((await truesweep('terminals', 'A-B=5k')).err).toContain('such as A,B=5k/5k');
    const open = await truesweep('terminals', 'A,B=OL/OL', 'A,C=OL/OL', 'B,C=OL/OL', '--json');
    expect(JSON.parse(open.out).kind).toBe('not-a-potentiometer');
  });

  describe('instruments lists the job’s own too', () => {
    const rowOf = async (...words: string[]) => {
      const { out, err } = await truesweep('instruments', ...job(), '--json', ...words);
      expect(err).toBe('');
      const { ranked } = JSON.parse(out);
      return ranked.find(({ name }: { name: string }) => name.includes('Bench logger'));
    };

    test('at the interval that was told', async () => {
      expect(await rowOf('--every', '1 ms')).toMatchObject({ kind: 'logger', reason: 'surely' });
      const slow = await rowOf('--every', '300 ms');
      expect(slow).toMatchObject({ reason: 'by-chance' });
      expect(slow.sight.chance).toBeLessThan(0.1);
      const { out } = await truesweep('instruments', ...job(), '--every', '300 ms');
      expect(out).not.toContain('--every');
    });

    test('where none was told at the slowest that shows the spot, and that is said', async () => {
      expect(await rowOf()).toMatchObject({ reason: 'surely' });
      const { out } = await truesweep('instruments', ...job());
      expect(out.replace(/\s+/g, ' ')).toMatch(
        /How often “Bench logger” samples is not told: it is taken to do so every 4 ms.* --every/,
      );
    });

    test('by its own range and resolution', async () => {
      const coarse = { ...benchJob.instrument, resolution: '2 V', range: { low: 0, high: 8 } };
      await writeFile(at('coarse.json'), JSON.stringify({ ...benchJob, instrument: coarse }));
      const { out } = await truesweep('instruments', '--job', at('coarse.json'), '--json');
      const { ranked } = JSON.parse(out);
      const own = ranked.find(({ name }: { name: string }) => name.includes('Bench logger'));
      expect(own.reason).toBe('too-coarse');
    });
  });

  test('set-closed tells how far to turn', async () => {
    const entries = ['--reading', '0.62V', '--wanted', '0.5V', '--turned', '2', '--then', '0.7V'];
    const { out } = await truesweep('set-closed', ...entries);
    expect(out.replace(/\s+/g, ' ')).toContain('by 3.0°, against the way you turned it');
  });

  test('what simulate prints, score reads, and plots with its findings', async () => {
    const { out } = await truesweep('simulate', ...job(), '--worn-at', '30%');
    await writeFile(at('practice.csv'), out);
    const { out: judged } = await score(at('practice.csv'), '--plot');
    expect(judged).toContain('FAIL');
    expect(judged).toMatch(/\n +1 +2 +3 /);
    for (const line of judged.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  test('a report is written once, opens again, and is not overwritten unasked', async () => {
    const out = at('report.html');
    const args = ['report', ...job(), at('sound.csv'), '--out', out];
    expect(await truesweep(...args)).toMatchObject({ code: 0, err: '' });
    expect((await truesweep(...args)).err).toContain('(file-exists)');
    expect((await truesweep(...args, '--overwrite')).code).toBe(0);
    const again = await truesweep('reopen', out, at('sound.csv'));
    expect(again.out).toContain('sound.csv: Pass; scored again with the same verdict.');
    expect((await truesweep('reopen', out, at('flat.csv'))).err).toContain('(not-in-report)');
    expect((await truesweep('reopen', at('sound.csv'))).err).toContain('(no-report)');
  });

  describe('a report that was damaged is refused by its name', () => {
    const damaged = async (from: string | RegExp, to: string) => {
      const out = at('whole.html');
      await truesweep('report', ...job(), at('slow.csv'), '--out', out, '--overwrite');
      const text = await readFile(out, 'utf8');
      const begin = text.indexOf('id="truesweep-report"');
      const data = text.slice(begin).replace(from, to);
      expect(data).not.toBe(text.slice(begin));
      await writeFile(at('damaged.html'), text.slice(0, begin) + data);
      return truesweep('reopen', at('damaged.html'));
    };

    test('a file that is not in it is told, beside what became of the others', async () => {
      const out = at('two.html');
      await truesweep('report', ...job(), at('slow.csv'), at('flat.csv'), '--out', out);
      const files = [at('slow.csv'), at('none.csv'), at('sound.csv'), at('flat.csv')];
      const again = await truesweep('reopen', out, ...files);
      expect(again.code).toBe(2);
      expect(again.out).toContain('slow.csv: Inconclusive; scored again with the same verdict.');
      expect(again.out).toContain('flat.csv: Fail; scored again with the same verdict.');
      expect(again.out).toMatch(/none\.csv\n {2}NOT JUDGED: .*\(missing-file\)/s);
      expect(again.out).toMatch(/sound\.csv\n {2}NOT JUDGED: .*\(not-in-report\)/s);
      expect(again.err).toContain('2 of 4 recordings were not judged: ');
      const data = JSON.parse((await truesweep('reopen', out, ...files, '--json')).out);
      expect(data.refused).toMatchObject([
        { file: at('none.csv'), refused: { code: 'missing-file' } },
        { file: at('sound.csv'), refused: { code: 'not-in-report' } },
      ]);
    });

    test.each<[string, string | RegExp, string, string]>([
      ['job', '"limiter":1000', '"limiter":-1', 'damaged.html: job.hookUp.limiter'],
      ['samples', /"time":"[^"]{11}/, '"time":"', 'damaged.html, slow.csv'],
      ['no samples', /"time":"[^"]*"/, '"time":""', 'damaged.html: sweep.time'],
      ['verdict', '"verdict":"inconclusive"', '"verdict":"good"', 'damaged.html: '],
      ['stretches', '"envelope":', '"stretches":[{}],"envelope":', 'damaged.html: '],
      ['nothing but the beginning', /"envelope".*/s, '', 'damaged.html: '],
    ])('%s', async (_, from, to, where) => {
      const { code, out, err } = await damaged(from, to);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toContain(where);
      expect(err).toMatch(/^truesweep: .*\. \([a-z-]+\)\n$/);
    });
  });

  describe('a report never replaces what it is made from', () => {
    const refused = async (out: string, ...more: string[]) => {
      const bytes = await readFile(at('mine.csv'));
      const jobText = await readFile(at('mine.json'));
      const { code, err } = await truesweep(
        ...['report', at('mine.csv'), '--job', at('mine.json'), '--overwrite', '--out', out],
        ...more,
      );
      expect(code).toBe(2);
      expect(err).toContain('(output-is-input)');
      expect(await readFile(at('mine.csv'))).toEqual(bytes);
      expect(await readFile(at('mine.json'))).toEqual(jobText);
    };

    beforeAll(async () => {
      await copyFile(at('sound.csv'), at('mine.csv'));
      const listed = { ...benchJob, recordings: [{ file: 'slow.csv' }] };
      await writeFile(at('mine.json'), JSON.stringify(listed));
      await symlink(at('mine.csv'), at('mine-linked.csv'));
      await link(at('mine.json'), at('mine-again.json'));
    });

    test.each([
      ['the recording', 'mine.csv'],
      ['the job', 'mine.json'],
      ['the recording by another way', '../NAME/mine.csv'],
      ['a link to the recording', 'mine-linked.csv'],
      ['another name of the job', 'mine-again.json'],
      ['a recording that the job lists', 'slow.csv'],
    ])('%s', async (_, out) => {
      await refused(at(out.replace('NAME', basename(folder))));
      await refused(at(out.replace('NAME', basename(folder))), '--markdown');
    });

    test('and says so before it judges', async () => {
      const args = ['--job', at('mine.json'), '--overwrite', '--out', at('mine.csv')];
      const { err } = await truesweep('report', at('mine.csv'), at('one.csv'), ...args);
      expect(err).toContain('(output-is-input)');
    });
  });

  test.each(['bash', 'zsh', 'fish'])('the completion of %s knows every command', async (shell) => {
    const { out } = await truesweep('completion', shell);
    for (const name of ['terminals', 'plan', 'expect', 'score', 'compare', 'reopen'])
      expect(out).toContain(name);
    expect(out).toMatch(/(--|-l )exit-by-verdict/);
    expect((await truesweep('completion', 'sh')).err).toContain('name bash, zsh or fish');
  });

  test('a refusal that speaks of an option says where it is given', async () => {
    await writeFile(at('commas.csv'), '0,512\n0,513\n');
    const { err } = await score(at('commas.csv'));
    expect(err).toMatch(/one number, 0\.512.*the fields 0 and 512.*"text": \{.*ambiguous-comma/);
  });

  test('a recording that the job names by its hash is not exchanged for another', async () => {
    const listed = { ...benchJob, recordings: [{ file: 'sound.csv', sha256: '0'.repeat(64) }] };
    await writeFile(at('hashed.json'), JSON.stringify(listed));
    const { code, err } = await truesweep('score', '--job', at('hashed.json'));
    expect(code).toBe(2);
    expect(err).toContain('(recording-changed)');
  });

  describe('a sound recording', () => {
    const sound = { fullScale: '3 V', attenuation: 2, microphoneBias: 'off' };
    const job = (more: object, recording: object) => ({
      ...benchJob,
      instrument: { ...benchJob.instrument, ...more },
      recordings: [{ file: 'sweep.wav', ...recording }],
    });

    beforeAll(async () => {
      await writeFile(at('sweep.wav'), soundFile(recording(1 / 8000).signal, 6));
    });

    const judged = async (json: object) => {
      await writeFile(at('wav.json'), JSON.stringify(json));
      return await truesweep('score', '--exit-by-verdict', '--job', at('wav.json'));
    };

    test('through a direct input it is judged like any other', async () => {
      const { code, out } = await judged(job({ coupling: 'dc' }, { sound }));
      expect(code).toBe(0);
      expect(out.replaceAll(/\s+/g, ' ')).toContain('signal from channel 1 of 1');
    });

    test('through a capacitor it cannot pass', async () => {
      const { code, out } = await judged(job({ coupling: 'ac' }, { sound }));
      expect(code).toBeGreaterThan(0);
      expect(out).toContain('INCONCLUSIVE');
      expect(out.replaceAll(/\s+/g, ' ')).toContain('coupled directly (DC)');
    });

    test('without its scale or its coupling it is refused, with what to write', async () => {
      expect((await judged(job({ coupling: 'dc' }, {}))).err).toMatch(/“fullScale”|"fullScale"/);
      expect((await judged(job({}, { sound }))).err).toContain('(no-coupling)');
    });
  });

  test('the standard input can stand for one file only', async () => {
    expect((await truesweep('score', '--job', '-', '-')).err).toContain('(one-input)');
  });

  test('every command has a worked example', async () => {
    const { out } = await truesweep('completion', 'fish');
    const names = [...out.matchAll(/-a (\S+)/g)].map(([, name]) => name!);
    expect(names.length).toBeGreaterThan(9);
    for (const name of names) {
      const { out: help } = await truesweep(name, '--help');
      expect(help).toContain(`truesweep ${name} `);
      expect(help).toContain('A worked example');
    }
  });
});
