import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { foreignFile } from './foreignFile.js';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

test.each([
  ['a.pdf', '%PDF-1.7', 'document'],
  ['a.png', '\x89PNG\r\n', 'picture'],
  ['photo.jpg', '\xff\xd8\xff\xe0', 'picture'],
  ['sweep.xlsx', 'PK\x03\x04....', 'spreadsheet'],
  ['sweep.XLS', '\xd0\xcf\x11\xe0', 'spreadsheet'],
  ['sweeps.zip', 'PK\x03\x04....', 'packed'],
  ['clip.mp4', '\x00\x00\x00\x18ftypmp42', 'film'],
  ['sweep.mp3', 'ID3\x03', 'compressed-sound'],
  ['none.csv', '', 'empty'],
  ['bench.csv', 'BM,time\n0,1\n', undefined],
  ['text.csv', '0,1\n1,2\n', undefined],
] as const)('%s', (name, head, kind) => {
  expect(foreignFile(name, bytes(head))).toBe(kind);
});

test("takes none of the demo's recordings for another kind of file", () => {
  const demo = readFileSync(new URL('../../../examples/recordings/sound.csv', import.meta.url));
  expect(foreignFile('sound.csv', demo)).toBeUndefined();
});
