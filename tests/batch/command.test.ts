import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import type { RecordingResult } from '@truesweep/jobs/node';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { soak } from '../counts.js';
import { manyRecordings, recordingText, variedText } from './invented.js';

const root = join(import.meta.dirname, '../..');
const command = join(root, 'packages/cli/dist/truesweep.js');
const job = join(root, 'examples/outboard-sensor.job.json');
const isRoot = process.getuid?.() === 0;
/** Whom no file belongs to. */
const nobody = 65534;
let folder = '';
let texts: readonly string[] = [];
let count = 0;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'truesweep-batch-'));
  chmodSync(folder, 0o777);
  texts = [1, 2, 3, 4].map((seed) =>
    recordingText({ seed, interval: 0.005, strokes: 2, isWorn: seed % 2 === 0 }),
  );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A new folder with recordings of these names. */
function recordingsIn(...names: readonly string[]): string {
  count += 1;
  const made = join(folder, `in-${count}`);
  mkdirSync(made);
  names.forEach((name, i) => {
    writeFileSync(join(made, name), variedText(texts[i % texts.length]!, i));
  });
  return made;
}

const newOut = () => {
  count += 1;
  return join(folder, `out-${count}`);
};

function batch(args: readonly string[], more: object = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, 'batch', ...args], {
    encoding: 'utf8',
    cwd: folder,
    timeout: 120_000,
    ...more,
  });
  return { code: status, out: stdout, err: stderr };
}

const judge = (paths: readonly string[], out: string, ...more: readonly string[]) =>
  batch([...paths, '--job', job, '--out', out, ...more]);

const resultsIn = (out: string) =>
  readFileSync(join(out, 'results.jsonl'), 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as RecordingResult);

/** What became of each file, by its name: its verdict, or the code that it was refused with. */
const outcomesIn = (out: string, below: string) =>
  Object.fromEntries(
    resultsIn(out).map((one) => [
      relative(below, one.file),
      'verdict' in one ? one.verdict : one.refused.code,
    ]),
  );

describe('killed at any moment', () => {
  test('and given again, every file is there once and whole, and nothing was judged twice', async () => {
    const recordings = join(folder, 'many');
    manyRecordings(recordings, texts, 50);
    writeFileSync(join(recordings, 'empty.csv'), '');
    const whole = newOut();
    const begun = performance.now();
    expect(judge([recordings], whole).code).toBe(2);
    const took = performance.now() - begun;
    const files = ['results.jsonl', 'results.csv', 'summary.html'];
    const wanted = files.map((name) => readFileSync(join(whole, name), 'utf8'));
    expect(resultsIn(whole)).toHaveLength(51);
    let inTheMiddle = 0;
    for (let i = 0; i < 20 * Math.min(soak, 5); i++) {
      const out = newOut();
      const args = [command, 'batch', recordings, '--job', job, '--out', out];
      const child = spawn(process.execPath, args, { cwd: folder, stdio: 'ignore' });
      await killedAfter(child, Math.random() * took);
      const journal = join(out, 'journal.jsonl');
      const kept = existsSync(journal) ? readFileSync(journal, 'utf8').split('\n').length - 1 : 0;
      if (kept > 0 && kept < 51) inTheMiddle += 1;
      const { code, err } = judge([recordings], out, '--workers', String(1 + (i % 3)));
      expect([code, err.includes('empty.csv')]).toEqual([2, true]);
      const got = files.map((name) => readFileSync(join(out, name), 'utf8'));
      expect(got.map((text, at) => text === wanted[at])).toEqual([true, true, true]);
      // Of each file the journal has one line: what was there was not judged again.
      expect(readFileSync(journal, 'utf8').trimEnd().split('\n')).toHaveLength(51);
      expect(readdirSync(out).toSorted()).toEqual(['journal.jsonl', ...files.toSorted()]);
      rmSync(out, { recursive: true });
    }
    expect(inTheMiddle).toBeGreaterThan(0);
  }, 600_000);

  test('Ctrl-C keeps what is judged, says so, and the same command goes on', async () => {
    const recordings = join(folder, 'stopped');
    manyRecordings(recordings, texts, 150);
    const out = newOut();
    const args = [command, 'batch', recordings, '--job', job, '--out', out];
    const child = spawn(process.execPath, args, { cwd: folder });
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text) => {
      err += text;
    });
    const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
    const journal = join(out, 'journal.jsonl');
    while (!existsSync(journal) || readFileSync(journal).length === 0) {
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(err).toMatch(/Stopped: \d+ results? (is|are) kept in .*journal\.jsonl/);
    expect(existsSync(join(out, 'summary.html'))).toBe(false);
    expect(judge([recordings], out).code).toBe(0);
    expect(resultsIn(out)).toHaveLength(150);
  });
});

test.skipIf(process.platform !== 'linux')(
  'a worker that is killed costs one recording, which another try judges',
  async () => {
    const recordings = join(folder, 'worker-killed');
    manyRecordings(recordings, texts, 150);
    const out = newOut();
    const args = [command, 'batch', recordings, '--job', job, '--out', out];
    const child = spawn(process.execPath, args, { cwd: folder, stdio: 'ignore' });
    const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
    const journal = join(out, 'journal.jsonl');
    while (!existsSync(journal) || readFileSync(journal).length === 0) {
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    const [worker] = readFileSync(`/proc/${child.pid}/task/${child.pid}/children`, 'utf8').split(
      ' ',
    );
    process.kill(Number(worker), 'SIGKILL');
    expect(await ended).toBe(1);
    const codes = Object.values(outcomesIn(out, recordings));
    expect(codes).toHaveLength(150);
    expect(codes.filter((code) => code === 'failed')).toHaveLength(1);
    expect(judge([recordings], out).code).toBe(0);
  },
);

function killedAfter(child: ChildProcess, milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(() => child.kill('SIGKILL'), milliseconds);
    child.on('exit', () => resolve());
  });
}

describe('what is no recording, or can’t be read', () => {
  test('each stands in the results with its refusal, the others are judged', () => {
    const recordings = recordingsIn('good.csv', 'worn.csv', 'note.md', '.hidden.csv');
    const inside = (name: string) => join(recordings, name);
    execFileSync('mkfifo', [inside('pipe.csv')]);
    mkdirSync(inside('folder.csv'));
    writeFileSync(join(inside('folder.csv'), 'within.txt'), variedText(texts[0]!, 9));
    symlinkSync('nowhere.csv', inside('link.csv'));
    symlinkSync('good.csv', inside('other name.csv'));
    symlinkSync('.', inside('loop'));
    writeFileSync(inside('empty.csv'), '');
    writeFileSync(
      inside('picture.csv'),
      Uint8Array.from({ length: 999 }, (_, i) => i % 256),
    );
    const out = newOut();
    const { code, err } = judge([recordings, inside('lost.csv')], out);
    expect(outcomesIn(out, recordings)).toEqual({
      'empty.csv': 'empty-file',
      'folder.csv': 'not-a-file',
      'folder.csv/within.txt': expect.any(String),
      'good.csv': expect.stringMatching(/^(pass|inconclusive)$/),
      'link.csv': 'missing-file',
      'lost.csv': 'missing-file',
      'other name.csv': expect.stringMatching(/^(pass|inconclusive)$/),
      'picture.csv': 'binary-file',
      'pipe.csv': 'not-a-file',
      'worn.csv': 'fail',
    });
    expect(code).toBe(2);
    expect(err).toContain('This is a pipe, which can be read once only');
    expect(err).toContain('This link leads to “nowhere.csv”, where nothing is');
    expect(err).toContain('This is a folder named like a recording');
    for (const line of err.trimEnd().split('\n')) expect(line).toMatch(/^truesweep: /);
  });

  // Root may read everything; without it, this account may take the right from itself.
  test('a file and a folder without permission', () => {
    const recordings = recordingsIn('good.csv', 'secret.csv');
    chmodSync(join(recordings, 'secret.csv'), 0);
    mkdirSync(join(recordings, 'closed'));
    chmodSync(join(recordings, 'closed'), 0);
    const out = newOut();
    const args = [recordings, '--job', job, '--out', out];
    const { code, err } = batch(args, isRoot ? { uid: nobody, gid: nobody } : {});
    chmodSync(join(recordings, 'closed'), 0o700);
    expect(err).toContain('The file may not be read; ask its owner');
    expect(outcomesIn(out, recordings)).toEqual({
      'good.csv': expect.any(String),
      'secret.csv': 'unreadable-file',
      closed: 'unreadable-file',
    });
    expect(code).toBe(2);
  });

  test('a larger one than is read, and one that needs more than all others at once', () => {
    const recordings = recordingsIn('a.csv', 'b.csv', 'c.csv');
    writeFileSync(join(recordings, 'large.csv'), texts[0]!.padEnd(300_000));
    const out = newOut();
    const { err } = judge([recordings], out, '--largest', '100 KB');
    expect(err).toContain('file-too-large');
    expect(resultsIn(out)).toHaveLength(4);
  });
});

describe('an output that takes nothing, or no more', () => {
  test('a full disk is told, what was judged stays, and the same command goes on', () => {
    const recordings = join(folder, 'for-a-small-disk');
    manyRecordings(recordings, texts, 40);
    const out = newOut();
    // A limit of the system on how large a file may grow stands for the disk: half of what the journal takes.
    const { status, stderr } = spawnSync(
      'sh',
      [
        '-c',
        `trap '' XFSZ; ulimit -f 150; exec "$0" "$@"`,
        process.execPath,
        ...[command, 'batch', recordings, '--job', job, '--out', out],
      ],
      { encoding: 'utf8', cwd: folder },
    );
    expect(status).toBe(2);
    expect(stderr).toMatch(
      /make the limit larger, then give the same command again\. \d+ results are kept/,
    );
    const kept = readFileSync(join(out, 'journal.jsonl'), 'utf8').trimEnd().split('\n');
    expect(kept.length).toBeGreaterThan(3);
    expect(kept.length).toBeLessThan(40);
    for (const line of kept) expect(JSON.parse(line)).toHaveProperty('verdict');
    expect(judge([recordings], out).code).toBe(0);
    const journal = readFileSync(join(out, 'journal.jsonl'), 'utf8').trimEnd().split('\n');
    expect(journal.slice(0, kept.length)).toEqual(kept);
    expect(journal).toHaveLength(40);
  });

  test('a folder that may not be written to', () => {
    const recordings = recordingsIn('good.csv');
    const shut = newOut();
    mkdirSync(shut);
    chmodSync(shut, 0o555);
    const args = [recordings, '--job', job, '--out', join(shut, 'results')];
    const { code, err } = batch(args, isRoot ? { uid: nobody, gid: nobody } : {});
    expect(code).toBe(2);
    expect(err).toMatch(/It may not be written to.* Nothing was judged\. \(cannot-write\)/);
  });

  test('a folder that is a file, one with somebody else’s results, one that another batch writes to', () => {
    const recordings = recordingsIn('good.csv');
    expect(judge([recordings], join(recordings, 'good.csv')).err).toContain('cannot-write');
    const others = newOut();
    mkdirSync(others);
    writeFileSync(join(others, 'results.csv'), 'mine');
    expect(judge([recordings], others).err).toContain('that no batch left');
    expect(readFileSync(join(others, 'results.csv'), 'utf8')).toBe('mine');
    const used = newOut();
    expect(judge([recordings], used).code).toBe(0);
    const host = execFileSync(process.execPath, ['-p', 'os.hostname()'], { encoding: 'utf8' });
    const claim = { process: process.pid, host: host.trim() };
    writeFileSync(join(used, 'batch.lock'), JSON.stringify(claim));
    expect(judge([recordings], used).err).toContain(`process ${process.pid}`);
    writeFileSync(join(used, 'batch.lock'), JSON.stringify({ ...claim, process: 2 ** 30 }));
    expect(judge([recordings], used).code).toBe(0);
  });

  test('results in the recordings’ own folder are no recordings', () => {
    const recordings = recordingsIn('good.csv');
    for (let i = 0; i < 2; i++) expect(judge([recordings], recordings).code).toBe(0);
    expect(resultsIn(recordings)).toHaveLength(1);
  });
});

describe('what is judged', () => {
  test('folders, patterns, files and a manifest together, each file once', () => {
    const recordings = recordingsIn('a.csv', 'b.csv', 'c.log', 'd.odd');
    mkdirSync(join(recordings, 'deep'));
    writeFileSync(join(recordings, 'deep', 'e.csv'), variedText(texts[0]!, 20));
    writeFileSync(
      join(recordings, 'list.csv.list'),
      'File;Sensor;Note\na.csv;"Port ""engine""";\n"b.csv";;"two\nlines"\n;Nameless;\na.csv;Again;\n',
    );
    const out = newOut();
    const { code } = judge(
      [recordings, join(recordings, '*.odd'), join(recordings, '**', '*.csv')],
      ...([out, '--manifest', join(recordings, 'list.csv.list')] as const),
    );
    const results = resultsIn(out);
    expect(results.map(({ file }) => relative(recordings, file))).toEqual([
      'a.csv',
      'b.csv',
      'c.log',
      'd.odd',
      'deep/e.csv',
      'list.csv.list, line 5',
      'list.csv.list, line 6',
    ]);
    expect(results[0]).toMatchObject({ sensor: 'Port "engine"' });
    expect(results[1]).toMatchObject({ note: 'two\nlines' });
    expect(results[5]).toMatchObject({ refused: { code: 'missing', place: { line: 5 } } });
    expect(results[6]).toMatchObject({ refused: { code: 'duplicate', place: { line: 6 } } });
    expect(code).toBe(2);
  });

  test('exit codes and data are those of score', () => {
    const recordings = recordingsIn('good.csv', 'worn.csv');
    const out = newOut();
    expect(judge([recordings], out).code).toBe(0);
    const { code, out: data } = judge([recordings], out, '--exit-by-verdict', '--json');
    expect(code).toBe(11);
    expect(JSON.parse(data).counts).toMatchObject({ fail: 1, notJudged: 0 });
    expect(batch(['--job', job, '--out', newOut()]).code).toBe(0);
    expect(batch(['*.none', '--job', job, '--out', newOut()]).err).toContain('Nothing matches');
    expect(batch(['--out', newOut()]).err).toContain('nothing-to-score');
    expect(judge([recordings], newOut(), '--workers', '0').err).toContain('--workers');
    const unnamed = newOut();
    expect(batch([recordings, '--out', unnamed]).code).toBe(2);
    expect(outcomesIn(unnamed, recordings)).toEqual({
      'good.csv': 'missing',
      'worn.csv': 'missing',
    });
  });

  test('the summary needs nothing else, and no script', () => {
    const recordings = recordingsIn('good.csv', 'worn.csv', '<b>.csv');
    writeFileSync(join(recordings, 'empty.csv'), '');
    const out = newOut();
    judge([recordings], out);
    const page = readFileSync(join(out, 'summary.html'), 'utf8');
    expect(page).not.toMatch(/<script|\bsrc=|\bhref="(?!#)|url\(|@import|\son\w+="/);
    expect(page).toContain('&lt;b>.csv');
    const at = ['id="fail"', 'id="not-judged"', 'id="pass"'].map((id) => page.indexOf(id));
    expect(at.filter((place) => place >= 0)).toEqual(
      at.filter((place) => place >= 0).toSorted((a, b) => a - b),
    );
    expect(page.match(/<svg /g)).toHaveLength(3);
  });
});
