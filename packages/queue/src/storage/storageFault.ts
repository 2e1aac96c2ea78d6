/** What a storage refuses: `missing` and `too-large` are the object's fault; `unreachable` may pass, so that another try is due. */
export type StorageFaultCode = 'missing' | 'too-large' | 'unreachable';

/**
 * Thrown by a storage.
 *
 * @param code What kind of fault it is.
 * @param message A sentence: what was wrong, and what to do. It holds no secret.
 *
 * @example
 * new StorageFault('missing', 'There is no a.csv.').code // => 'missing'
 */
export class StorageFault extends Error {
  override readonly name = 'StorageFault';
  /** What kind of fault it is. */
  readonly code: StorageFaultCode;

  constructor(code: StorageFaultCode, message: string) {
    super(message);
    this.code = code;
  }
}
