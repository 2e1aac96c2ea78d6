/**
 * Whether a text may name an object: parts between slashes of which none is empty, `.` or `..`, without backslashes and controls, at most 1024 bytes, so that
 * it means one place below a folder and the same in a bucket.
 *
 * @example
 * isObjectName('2026/port.csv') // => true
 * isObjectName('../port.csv') // => false
 */
export function isObjectName(text: unknown): text is string {
  return (
    typeof text === 'string' &&
    text.length > 0 &&
    Buffer.byteLength(text) <= 1024 &&
    !/[\\\p{Cc}\p{Cs}]/u.test(text) &&
    text.split('/').every((part) => part !== '' && part !== '.' && part !== '..')
  );
}
