import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeRecordings } from './makeRecordings.js';

const folder = new URL('recordings/', import.meta.url);
const made = makeRecordings();

test('the folder holds these recordings and no others', () => {
  expect(readdirSync(folder).sort()).toEqual(made.map(({ name }) => name).sort());
});

// Meant to be changed? `node examples/makeRecordings.ts`, after a build, writes them anew.
test.each(made)('$name is what the simulator makes, byte for byte', ({ name, text }) => {
  expect(readFileSync(new URL(name, folder)).equals(Buffer.from(text))).toBe(true);
});
