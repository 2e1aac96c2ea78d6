import { InputError } from '@truesweep/core';

/** Numbers as text: 64-bit floating point, little-endian, in base 64 (RFC 4648, section 4). */
export function toBase64(values: Float64Array): string {
  const bytes = new Uint8Array(values.length * 8);
  const view = new DataView(bytes.buffer);
  for (const [i, value] of values.entries()) view.setFloat64(8 * i, value, true);
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/**
 * The numbers that {@link toBase64} wrote.
 *
 * @throws InputError `broken-samples`, with the path, where the text is none.
 */
export function fromBase64(text: unknown, path: string): Float64Array {
  const decoded = typeof text === 'string' ? decodedOf(text) : undefined;
  if (decoded === undefined || decoded.length % 8 !== 0) {
    throw new InputError(
      'broken-samples',
      path,
      `${path} holds no whole numbers in base 64; take the report as it was written.`,
    );
  }
  const view = new DataView(new ArrayBuffer(decoded.length));
  for (let i = 0; i < decoded.length; i++) view.setUint8(i, decoded.charCodeAt(i));
  return Float64Array.from({ length: decoded.length / 8 }, (_, i) => view.getFloat64(8 * i, true));
}

function decodedOf(text: string): string | undefined {
  try {
    return atob(text);
  } catch {
    return undefined;
  }
}
