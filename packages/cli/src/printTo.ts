import { fstatSync, writeSync } from 'node:fs';

/** A printer to an output; what a file doesn't take whole is told, for a stream drops the rest in silence. */
export function printTo(
  output: NodeJS.WriteStream & { readonly fd: number },
  fail: (error: NodeJS.ErrnoException) => never,
): (text: string) => void {
  // With big numbers: Node takes what a plain call leaves behind of a pipe for the next path that it looks up, and follows its links no more.
  if (!fstatSync(output.fd, { bigint: true }).isFile()) return (text) => output.write(text);
  return (text) => {
    try {
      writeWhole(output.fd, Buffer.from(text));
    } catch (error) {
      fail(error as NodeJS.ErrnoException);
    }
  };
}

/** A nearly full disk takes a part of what is written, and refuses only the next. */
function writeWhole(file: number, bytes: Uint8Array): void {
  for (let from = 0; from < bytes.length; ) from += writeSync(file, bytes, from);
}
