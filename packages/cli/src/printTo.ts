import { fstatSync } from 'node:fs';
import { writeWhole } from './writeWhole.js';

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
