import { createReadStream, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { delimitedReader } from './delimitedReader.js';
import { readDelimited } from './readDelimited.js';
import { readRecording } from './readRecording.js';
import { samplesOf } from './samplesOf.js';

const rows = Array.from({ length: 30_000 }, (_, row) => `${row};${(row % 500) / 100}`);
const text = `time (ms);wiper (V);supply (V)\n${rows.map((row) => `${row};5`).join('\r\n')}`;
const whole = readDelimited(text, { supplyColumn: 2 });

const folder = mkdtempSync(join(tmpdir(), 'truesweep-stream-'));
const file = join(folder, 'long.csv');
writeFileSync(file, text);
afterAll(() => rmSync(folder, { recursive: true }));

const sources = [
  ['a Blob', () => new Blob([text])],
  ['a stream of the web', () => new Blob([text]).stream()],
  ['a stream of Node', () => createReadStream(file, { highWaterMark: 1009 })],
] as const;

describe.each(sources)('%s', (_, source) => {
  test('is read to the same sweep as the whole file', async () => {
    expect(await readRecording(source(), { supplyColumn: 2 })).toEqual(whole);
  });

  test('gives its samples in runs', async () => {
    const times: number[] = [];
    for await (const samples of samplesOf(source())) times.push(...samples.time);
    expect(times).toEqual([...whole.sweep.time]);
  });
});

test('a stream is let go of at the first fault', async () => {
  let cancelled = false;
  const endless = new ReadableStream<Uint8Array>({
    pull: (stream) => stream.enqueue(new TextEncoder().encode('1;0.2\n1;x\n'.repeat(5000))),
    cancel: () => {
      cancelled = true;
    },
  });
  await expect(readRecording(endless)).rejects.toMatchObject({ code: 'not-a-number' });
  expect(cancelled).toBe(true);
});

test('a stream without an end of its first line is refused early', async () => {
  const endless = new ReadableStream<Uint8Array>({
    pull: (stream) => stream.enqueue(new TextEncoder().encode('0.5,'.repeat(5000))),
  });
  await expect(readRecording(endless)).rejects.toMatchObject({ place: { line: 1 } });
});

test.each([100, 1009, 70_000])('pieces of %i bytes may all come in one place', async (size) => {
  async function* pieces() {
    const bytes = Buffer.from(text);
    const place = Buffer.alloc(size);
    for (let from = 0; from < bytes.length; from += size) {
      yield place.subarray(0, bytes.copy(place, 0, from));
    }
  }
  expect(await readRecording(pieces(), { supplyColumn: 2 })).toEqual(whole);
});

test.each([0, 10, text.length, 1e9, Number.MAX_SAFE_INTEGER])(
  'a size of %d bytes that was told changes nothing but the room',
  (size) => {
    const reader = delimitedReader({ supplyColumn: 2 }, size);
    reader.feed(new TextEncoder().encode(text));
    expect(reader.end().sweep).toEqual(whole.sweep);
  },
);
