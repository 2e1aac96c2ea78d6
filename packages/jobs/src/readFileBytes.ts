import { checkFields, InputError } from '@truesweep/core';
import { checkSize } from './checkInput.js';
import { filePieces } from './filePieces.js';
import { wholeOf } from './wholeOf.js';

/**
 * Reads a whole file.
 *
 * @param path Path of the file, from the working directory.
 * @param options With `most` a file of more bytes than that, 0 or more, is refused as soon as it is seen to have them; 1 GB (2³⁰ bytes) when left
 * out. A device may have no end.
 * @throws InputError `missing-file`, `not-a-file`, `unreadable-file` or `file-too-large`, with the path.
 *
 * @example
 * const bytes = await readFileBytes('LICENSE');
 * bytes.length > 0 // => true
 */
export async function readFileBytes(
  path: string,
  options: { readonly most?: number } = {},
): Promise<Uint8Array> {
  checkFields(options, 'options', { 'most?': checkSize });
  const { most = 2 ** 30 } = options;
  return await wholeOf(filePieces(path), most, () => {
    throw new InputError(
      'file-too-large',
      path,
      `The file holds more than ${most} bytes, as many as are read; name a smaller one.`,
    );
  });
}
