import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';

/** A write to the clipboard, the same by a control of one character, a direction mark, a step back, half a character. */
const evil = '\u001b]52;c;aGk=\u0007 \u009d52;c;aGk=\u009c \u202egnp\u2066 \b \u007f \ud83d';
/** What of it a file's name can hold. */
const evilName = evil.replace('\ud83d', '');
/** What of it a recording's heading can hold. */
const evilHeading = evilName.replaceAll('\u0007', '').replaceAll('\b', '');
const acted = /(?!\n)[\p{Cc}\p{Cs}\p{Bidi_Control}\p{Zl}\p{Zp}]/u;

let folder: string;
const at = (name: string) => join(folder, name);
const job = () => ['--job', at(`${evilName}.json`)];
const recording = () => at(`${evilName}.csv`);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-hostile-'));
  const example = JSON.parse(await readFile('examples/outboard-sensor.job.json', 'utf8'));
  const hostile = {
    ...example,
    title: evil,
    notes: evil,
    sensor: { ...example.sensor, name: evil },
    instrument: { ...example.instrument, name: evil },
    recordings: [{ file: `${evilName}.csv` }],
  };
  await writeFile(at(`${evilName}.json`), JSON.stringify(hostile));
  await writeFile(at('wrong.json'), JSON.stringify({ ...hostile, [evil]: 1 }));
  await writeFile(at('broken.json'), `{ "title": ${evil} }`);
  const [, ...rows] = (await readFile('examples/recordings/worn.csv', 'utf8')).split('\n');
  await writeFile(
    recording(),
    [`"time (s) ${evilHeading}","wiper (V) ${evilHeading}"`, ...rows].join('\n'),
  );
  await writeFile(at('fields.csv'), `${evilHeading},1\n${evilHeading},2\n`);
  await copyFile(at('fields.csv'), at(`${evilName}.txt`));
});
afterAll(() => rm(folder, { recursive: true }));

const said = (...args: string[]) => runTruesweep(args);

const hostile = (): readonly (readonly string[])[] => [
  ['score', ...job()],
  ['score', recording(), ...job(), '--plot'],
  ['score', at(`${evilName}.txt`), recording(), ...job()],
  ['score', at(`${evil}none`), ...job()],
  ['score', at('fields.csv'), ...job()],
  ['score', recording(), '--job', at('wrong.json')],
  ['score', recording(), '--job', at('broken.json')],
  ['compare', recording(), recording(), ...job()],
  ['expect', ...job()],
  ['plan', ...job()],
  ['plan', ...job(), '--wiper-current', evil],
  ['instruments', ...job()],
  ['instruments', ...job(), '--passes', evil],
  ['terminals', evil],
  ['terminals', `${evilName.replaceAll(' ', '')},B=5k/5k`, '\u009bA,C=1k/5k'],
  ['set-closed', '--reading', evil, '--wanted', '1', '--turned', '1', '--then', '1'],
  ['simulate', ...job(), '--seed', evil],
  ['completion', evil],
  [evil],
  ['score', `--${evil}`],
];

describe('no text of others acts on the terminal', () => {
  test('in what is printed and what is refused', async () => {
    for (const args of hostile()) {
      const { out, err } = await said(...args);
      const what = JSON.stringify(args);
      expect(out + err, what).not.toBe('');
      expect(out + err, what).not.toMatch(acted);
    }
  });

  test('it is shown as text instead', async () => {
    const { out } = await said('score', ...job());
    expect(out.split('\n')[0]).toContain('\\u001b]52;c;aGk=\\u0007 \\u009d52;c;');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('“time (s) \\u001b]52;c;aGk= \\u009d52');
  });

  test('nor with --json, and the data are the same', async () => {
    for (const args of hostile()) {
      const { out, err } = await said(...args, '--json');
      expect(out + err, JSON.stringify(args)).not.toMatch(acted);
    }
    expect((await said('score', ...job(), '--json-lines')).out).not.toMatch(acted);
    const { out } = await said('expect', ...job(), '--json');
    expect(JSON.parse(out).title).toBe(evil);
  });

  test('nor out of a stored report, an HTML page or Markdown', async () => {
    for (const [name, ...more] of [['r.html'], ['r.md', '--markdown']] as const) {
      const args = ['report', ...job(), '--out', at(`${evilName}${name}`), ...more];
      expect(await said(...args)).toMatchObject({ err: '' });
      expect((await said(...args)).err).not.toMatch(acted);
      expect((await said(...args, '--overwrite')).out).not.toMatch(acted);
      const text = await readFile(at(`${evilName}${name}`), 'utf8');
      expect(text).not.toMatch(acted);
      expect(text).not.toContain('\ufffd');
    }
    const { out, err } = await said('reopen', at(`${evilName}r.html`));
    expect(err).toBe('');
    expect(out).not.toMatch(acted);
    expect(out).toContain('\\u001b]52;c;aGk=\\u0007');
    const data = JSON.parse((await said('reopen', at(`${evilName}r.html`), '--json')).out);
    expect(data.title).toBe(evil);
  });
});
