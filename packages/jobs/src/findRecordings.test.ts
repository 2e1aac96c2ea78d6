import { expect, test } from 'vitest';
import { findRecordings, type NamedFile } from './findRecordings.js';
import { identifyRecording } from './identifyRecording.js';

const file = (name: string, text: string): NamedFile => ({
  name,
  bytes: new TextEncoder().encode(text),
});
const port = file('port.csv', 'abc');
const { sha256 } = await identifyRecording(port.bytes);

test('by name, with either slash in the path of the job', async () => {
  const recordings = [{ file: 'a/port.csv' }, { file: 'a\\b\\port.csv' }, { file: 'lost.csv' }];
  const found = await findRecordings(recordings, [file('other.csv', 'x'), port]);
  expect(found.map((one) => one.file)).toEqual([port, port, undefined]);
  expect(found[0]!.identity).toEqual({ bytes: 3, sha256 });
});

test('by hash, under another name and among others of the same name', async () => {
  const recordings = [{ file: 'port.csv', sha256 }];
  const renamed = file('port (1).csv', 'abc');
  const found = await findRecordings(recordings, [file('port.csv', 'abd'), renamed]);
  expect(found[0]!.file).toBe(renamed);
});

test.each([{ sha256: '0'.repeat(64) }, { bytes: 4 }])(
  'another file is refused: %o',
  async (told) => {
    const recordings = [{ file: 'port.csv', ...told }];
    await expect(findRecordings(recordings, [port])).rejects.toMatchObject({
      code: 'recording-changed',
    });
  },
);
