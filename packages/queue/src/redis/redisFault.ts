import { redisFaultSentence } from '../queueWords.js';

/** What Redis or the way to it refuses: `refused` is for somebody to mend (a password, a certificate), `unreachable` may pass. */
export type RedisFaultCode = 'refused' | 'unreachable';

/**
 * Thrown where Redis can't be used.
 *
 * @param code Whether it may pass.
 * @param message A sentence: what was wrong, and what to do. It holds no secret.
 *
 * @example
 * new RedisFault('unreachable', 'Redis is not reachable.').code // => 'unreachable'
 */
export class RedisFault extends Error {
  override readonly name = 'RedisFault';
  /** Whether it may pass. */
  readonly code: RedisFaultCode;

  constructor(code: RedisFaultCode, message: string) {
    super(message);
    this.code = code;
  }
}

/** What a certificate is refused with that no authority of ours gave, or that is of another host or time. */
const certificate = /CERT|SELF_SIGNED|ISSUER|ALTNAME|EPROTO|ERR_SSL|ERR_TLS/;

/** An error of the connection as a fault with a sentence; of its text no more is repeated than codes. */
export function redisFaultOf(label: string, error: unknown): RedisFault {
  const message = error instanceof Error ? error.message : '';
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (/WRONGPASS|NOAUTH|invalid password|without any password/i.test(message)) {
    return new RedisFault('refused', redisFaultSentence(label, 'password'));
  }
  if (/^NOPERM/.test(message)) {
    return new RedisFault('refused', redisFaultSentence(label, 'right'));
  }
  if (certificate.test(code)) {
    return new RedisFault('refused', redisFaultSentence(label, 'certificate', code));
  }
  return new RedisFault('unreachable', redisFaultSentence(label, 'unreachable', code || 'timeout'));
}
