import { spawn, spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';

/** Kills at so many moments, spread by a seeded sequence over the time of one write. */
const kills = 50;
const seed = 20_260_504;
const size = 24_000_000;

const built = pathToFileURL(
  fileURLToPath(new URL('../../packages/jobs/dist/node.js', import.meta.url)),
);
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-write-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** A program that says when it begins to write over a file, writes, and says when it is done. */
function program(path: string, letter: string): string {
  return `
    import { writeFileAtomically } from ${JSON.stringify(built.href)};
    const text = ${JSON.stringify(letter)}.repeat(${size});
    process.stdout.write('begun');
    await writeFileAtomically(${JSON.stringify(path)}, text, { overwrite: true });
    process.stdout.write('done');`;
}

/** Runs a program and kills it so many milliseconds after it began to write; tells how long it took. */
function killedAfter(code: string, milliseconds: number): Promise<number> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ['--input-type=module', '-e', code]);
    let begun = 0;
    child.stdout.once('data', () => {
      begun = performance.now();
      setTimeout(() => child.kill('SIGKILL'), milliseconds);
    });
    child.on('exit', () => resolve(performance.now() - begun));
  });
}

/** Numbers from 0 to 1 (linear congruential generator, Numerical Recipes' constants; from memory). */
function* seeded(): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (1_664_525 * state + 1_013_904_223) >>> 0;
    yield state / 2 ** 32;
  }
}

test('killed at any moment, a write leaves the old file or the new one, whole', async () => {
  const path = join(folder, 'job.json');
  await writeFile(path, 'o'.repeat(size));
  const whole = await killedAfter(program(path, 'n'), 60_000);
  const moments = seeded();
  let halves = 0;
  for (let i = 0; i < kills; i++) {
    await killedAfter(program(path, i % 2 ? 'n' : 'o'), moments.next().value * whole);
    const text = await readFile(path, 'latin1');
    expect(text.length).toBe(size);
    expect(text === text[0]!.repeat(size)).toBe(true);
    const others = (await readdir(folder)).filter((name) => name !== 'job.json');
    halves += others.length;
    await Promise.all(others.map((name) => rm(join(folder, name))));
  }
  expect(halves).toBeGreaterThan(0);
}, 180_000);

test('a full disk is told, and the old file stays', async () => {
  const path = join(folder, 'full.json');
  await writeFile(path, 'old');
  const code = `${program(path, 'n')}`;
  const { stdout, stderr, status } = spawnSync(
    'sh',
    [
      '-c',
      `trap '' XFSZ; ulimit -f 100; exec "$0" --input-type=module -e "$1"`,
      process.execPath,
      code,
    ],
    { encoding: 'utf8' },
  );
  expect(stdout).toBe('begun');
  expect(status).not.toBe(0);
  expect(stderr).toContain('Nothing was written. The file would be larger');
  expect(await readFile(path, 'utf8')).toBe('old');
  expect(await readdir(folder)).not.toContainEqual(expect.stringContaining('.part'));
});
