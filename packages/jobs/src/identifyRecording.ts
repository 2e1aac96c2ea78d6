import { checkBytes } from './checkInput.js';

/** What tells a recording from others of the same name. */
export interface RecordingIdentity {
  /** Size of the file, bytes, 0 or more. */
  readonly bytes: number;
  /** SHA-256 (FIPS 180-4) of its bytes: 64 hexadecimal digits in lower case. */
  readonly sha256: string;
}

/**
 * Size and SHA-256 of a recording's bytes, for its entry in a job; in Node as in a browser.
 *
 * @example
 * const identity = await identifyRecording(new TextEncoder().encode('abc'));
 * identity.bytes // => 3
 * identity.sha256.slice(0, 8) // => 'ba7816bf'
 */
export async function identifyRecording(bytes: Uint8Array): Promise<RecordingIdentity> {
  checkBytes(bytes, 'bytes');
  const digest = await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>);
  const sha256 = Array.from(new Uint8Array(digest), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
  return { bytes: bytes.length, sha256 };
}
