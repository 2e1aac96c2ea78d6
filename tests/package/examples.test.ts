import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { printed } from '../../examples/printed.js';
import { machineNode, root, run } from './tarballs.js';

// Copied to the project that has the packages from their tarballs, and run by the Node that its owner installed.
const folder = join(inject('scratch'), 'with-examples');
beforeAll(() => {
  cpSync(join(root, 'examples'), join(folder, 'examples'), { recursive: true });
});

test.each(Object.entries(printed))('%s runs as it is told to', (name, lines) => {
  const { status, stdout, stderr } = run(machineNode(), [`examples/${name}`], folder);
  expect(stderr).toBe('');
  expect(stdout.replaceAll('\u00a0', ' ').trimEnd().split('\n')).toEqual(lines);
  expect(status).toBe(0);
});

describe('batch/judgeMany.mjs', () => {
  const judge = (job: string, files: readonly string[]) =>
    run(machineNode(), ['examples/batch/judgeMany.mjs', job, ...files], folder);
  const job = 'examples/outboard-sensor.job.json';
  const [sound, worn, slow] = ['sound', 'worn', 'too-slow'].map(
    (name) => `examples/recordings/${name}.csv`,
  ) as [string, string, string];

  test('answers each recording in its own line, in the order they are named', () => {
    // The quickest to judge stand among the slowest, so that they are ready in another order.
    const files = [sound, slow, worn, slow, slow, sound, slow, worn, slow];
    const answers = { [sound]: 'pass (none)', [slow]: 'inconclusive (recording)' };
    const lines = files.map((file) => `${file}: ${answers[file] ?? 'fail (track)'}`);
    const { status, stdout, stderr } = judge(job, files);
    expect(stderr).toBe('');
    expect(stdout.trimEnd().split('\n')).toEqual(lines);
    expect(status).toBe(0);
  });

  test('a bad file answers in its own line, the others all the same, and the exit code tells', () => {
    writeFileSync(join(folder, 'cut.csv'), 'time (ms),wiper (V)\n0,0.5\n1,oops\n');
    const { status, stdout, stderr } = judge(job, [worn, 'cut.csv', 'lost.csv', 'examples', sound]);
    expect(stderr).toBe('');
    const lines = stdout.trimEnd().split('\n');
    expect(lines).toHaveLength(5);
    expect(lines[0]).toBe(`${worn}: fail (track)`);
    expect(lines[1]).toMatch(/^cut\.csv: not judged\. .*oops.*\(line 3\)$/);
    expect(lines[2]).toBe(
      'lost.csv: not judged. There is no such file; check its name and folder.',
    );
    expect(lines[3]).toBe('examples: not judged. This is a folder; name a file in it.');
    expect(lines[4]).toBe(`${sound}: pass (none)`);
    expect(status).toBe(2);
  });

  test('a name that would break its line or act on the terminal stays in its line', () => {
    const { stdout } = judge(job, ['lost\n\u001b[2Jpass.csv', sound]);
    const lines = stdout.trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    expect(stdout).not.toContain('\u001b');
    expect(lines[1]).toBe(`${sound}: pass (none)`);
  });

  test('a recording that ends its worker is answered too, and those after it', () => {
    const worker = join(folder, 'examples', 'batch', 'judgeOne.mjs');
    const code = readFileSync(worker, 'utf8');
    const faulty = code.replace(
      '  const result =',
      "  if (file === 'fatal.csv') throw new TypeError('a fault of the program');\n  const result =",
    );
    expect(faulty).not.toBe(code);
    writeFileSync(worker, faulty);
    const { status, stdout } = judge(job, ['fatal.csv', 'fatal.csv', 'fatal.csv', sound, worn]);
    writeFileSync(worker, code);
    const fatal = 'fatal.csv: not judged. Its worker ended: a fault of the program';
    expect(stdout.trimEnd().split('\n')).toEqual([
      fatal,
      fatal,
      fatal,
      `${sound}: pass (none)`,
      `${worn}: fail (track)`,
    ]);
    expect(status).toBe(2);
  });

  test('a wrong job is told once', () => {
    const { status, stdout, stderr } = judge('lost.json', [worn, sound]);
    expect(stdout).toBe('');
    expect(stderr).toBe('lost.json: There is no such file; check its name and folder.\n');
    expect(status).toBe(2);
  });

  test('without a recording it says how it is called', () => {
    const { status, stderr } = judge(job, []);
    expect(stderr).toContain('judgeMany.mjs job.json a.csv b.csv');
    expect(status).toBe(2);
  });
});
