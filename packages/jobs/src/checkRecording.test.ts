import { describe, expect, test } from 'vitest';
import { checkRecording } from './checkRecording.js';
import { identifyRecording } from './identifyRecording.js';

const bytes = (text: string) => new TextEncoder().encode(text);

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
