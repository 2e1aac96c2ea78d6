const polynomial = 0x1021;

/** The remainders of every byte. */
const remainders = Uint16Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte << 8;
  for (let bit = 0; bit < 8; bit++) {
    remainder = (remainder << 1) ^ (remainder & 0x8000 ? polynomial : 0);
  }
  return remainder & 0xffff;
});

/**
 * The cyclic redundancy check of a stretch of bytes: 16 bits, x¹⁶ + x¹² + x⁵ + 1, begun at 0, not reflected (CRC-16/XMODEM; the polynomial is
 * that of ITU-T V.41; from memory).
 */
export function crc16(bytes: Uint8Array, from: number, to: number): number {
  let remainder = 0;
  for (let at = from; at < to; at++) {
    remainder = ((remainder << 8) ^ remainders[(remainder >> 8) ^ bytes[at]!]!) & 0xffff;
  }
  return remainder;
}
