import { expect, test } from 'vitest';
import { crc16 } from './crc16.js';

test('the published check value: the digits 1 to 9', () => {
  const bytes = new TextEncoder().encode('x123456789y');
  // CRC-16/XMODEM, check 0x31C3 (from memory, as catalogues of such checks list it).
  expect(crc16(bytes, 1, 10)).toBe(0x31c3);
  expect(crc16(bytes, 3, 3)).toBe(0);
});

test('tells every burst of up to 16 bits', () => {
  const bytes = new TextEncoder().encode('1234567890,512,1023');
  const right = crc16(bytes, 0, bytes.length);
  for (let burst = 1; burst < 2 ** 16; burst += 251) {
    for (let at = 0; at < bytes.length - 1; at++) {
      const wrong = Uint8Array.from(bytes);
      wrong[at]! ^= burst >> 8;
      wrong[at + 1]! ^= burst & 0xff;
      expect(crc16(wrong, 0, wrong.length)).not.toBe(right);
    }
  }
});
