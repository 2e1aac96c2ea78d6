import { crc16 } from './crc16.js';

/** A line as the controllers write it, without its end. */
export function checkedLine(text: string): string {
  const check = crc16(new TextEncoder().encode(text));
  return `${text}*${check.toString(16).toUpperCase().padStart(4, '0')}`;
}

export const headingLine = checkedLine('time (us),signal (counts),supply (counts)');
