/** CRC-16/XMODEM, bit by bit as it is defined: polynomial 0x1021, not reflected, begun with 0. */
export function crc16(bytes: Uint8Array): number {
  let crc = 0;
  for (const byte of bytes)
    for (let bit = 7; bit >= 0; bit--) {
      const isOne = (crc >> 15) ^ ((byte >> bit) & 1);
      crc = ((crc << 1) & 0xffff) ^ (isOne ? 0x1021 : 0);
    }
  return crc;
}
