import { describe, expect, test } from 'vitest';
import { bytesOf, secondsOf, wholeOf } from './quantities.js';

describe('quantities of options', () => {
  test.each([
    ['30 s', 30],
    ['500ms', 0.5],
    ['1.5 h', 5400],
    ['10 min', 600],
  ])('%s is a length of time', (text, seconds) => {
    expect(secondsOf(text, '--pause')).toBe(seconds);
  });
  test.each(['', '30', '-1 s', '0 s', '1e3 s', '99999 h', 'soon'])('%s is none', (text) => {
    expect(() => secondsOf(text, '--pause')).toThrow('no length of time');
  });
  test.each([
    ['1 GB', 2 ** 30],
    ['200 MB', 200 * 2 ** 20],
    ['1.5kb', 1536],
  ])('%s is a size', (text, bytes) => {
    expect(bytesOf(text, '--largest')).toBe(bytes);
  });
  test.each(['', '5', '0 MB', '1 TB', '99999999999 GB'])('%s is no size', (text) => {
    expect(() => bytesOf(text, '--largest')).toThrow('no size');
  });
  test('whole numbers keep within their bounds', () => {
    expect(wholeOf('12', '--tries', 1, 12)).toBe(12);
    for (const text of ['0', '13', '1.5', '-1', '', '0x5'])
      expect(() => wholeOf(text, '--tries', 1, 12)).toThrow('from 1 to 12');
  });
});
