import { InputError } from '@truesweep/core';

/** Names the file in what its reading or judging refuses. */
export async function inFile<Result>(file: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof InputError) || error.path === file) throw error;
    const named = error.message.startsWith(error.path);
    const path = named ? file : `${file}, ${error.path}`;
    throw new InputError(error.code, path, error.message, error.place);
  }
}
