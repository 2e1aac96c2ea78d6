import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAddress, writeAddress } from './address.js';

const names = ['source', 'track', 'load', 'wiperCurrent'];

test('any texts of a form come back from their address', () => {
  const texts = fc.dictionary(
    fc.constantFrom(...names),
    fc.string({ unit: 'grapheme', maxLength: 50 }).filter((text) => text.length <= 100),
    { noNullPrototype: true },
  );
  fc.assert(
    fc.property(texts, (changed) => {
      const { hash } = new URL(writeAddress(changed), 'http://localhost/calculators/');
      expect(readAddress(hash, names)).toEqual({ texts: changed });
    }),
  );
});

test('an address is short: the version and what was changed', () => {
  expect(writeAddress({ track: '4k7', load: '1 MΩ' })).toBe('#v1&track=4k7&load=1+M%CE%A9');
  expect(writeAddress({})).toBe('#v1');
});

test('the fragment of a heading is none', () => {
  for (const fragment of ['', '#', '#_top', '#v', '#vehicle', '#version-1'])
    expect(readAddress(fragment, names)).toBeUndefined();
});

test('what is unknown is told, the rest is read', () => {
  expect(readAddress('#v1&trak=4k7&source=6+V', names)).toEqual({
    texts: { source: '6 V' },
    notice: expect.stringContaining('trak'),
  });
});

test('nothing is read of a newer version', () => {
  expect(readAddress('#v2&source=6+V', names)).toEqual({
    texts: {},
    notice: expect.stringContaining('newer version'),
  });
});

test('a text as long as no entry is is cut off', () => {
  const kept = readAddress(`#v1&source=${'9'.repeat(10_000)}`, names);
  expect(kept?.texts.source).toHaveLength(100);
});
