import { describe, expect, test } from 'vitest';
import { checkRecording, identifyRecording } from './recordingIdentity.js';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('identifyRecording', () => {
  // FIPS 180-4's examples (NIST, "SHA256" example values; from memory): one block, and the empty message.
  test.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of %j', async (text, sha256) => {
    expect(await identifyRecording(bytes(text))).toEqual({ bytes: text.length, sha256 });
  });
});

describe('checkRecording', () => {
  test('takes any file where the job says nothing, and the same one where it does', async () => {
    const found = await identifyRecording(bytes('0,1\n1,2\n'));
    expect(() => checkRecording({ file: 'a.csv' }, found)).not.toThrow();
    expect(() => checkRecording({ file: 'a.csv', ...found }, found)).not.toThrow();
  });

  test('refuses another size and another hash', async () => {
    const found = await identifyRecording(bytes('0,1\n1,2\n'));
    const other = await identifyRecording(bytes('0,1\n1,3\n'));
    const refused = expect.objectContaining({ code: 'recording-changed', path: 'a.csv' });
    expect(() => checkRecording({ file: 'a.csv', bytes: 9 }, found)).toThrow(refused);
    expect(() => checkRecording({ file: 'a.csv', ...other }, found)).toThrow(refused);
    expect(() => checkRecording({ file: 'a.csv', ...other }, found)).toThrow(
      /SHA-256 [0-9a-f]{8}….*as it was/,
    );
  });
});
