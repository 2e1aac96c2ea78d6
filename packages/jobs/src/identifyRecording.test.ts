import { describe, expect, test } from 'vitest';
import { identifyRecording } from './identifyRecording.js';

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
