import { fstatSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import { outputIsInputSentence, standardInputName } from '@truesweep/wording';
import { standardInput } from './inputPieces.js';

/**
 * Refuses to write to a file that is read, by whatever name or link; the standard input may be one too.
 *
 * @throws InputError `output-is-input`, with the path that was to be written.
 */
export async function refuseInput(out: string, inputs: readonly string[]): Promise<void> {
  const wanted = await identityOf(out);
  if (wanted === undefined) return;
  for (const input of inputs) {
    const isStandard = input === standardInput;
    if ((await (isStandard ? identityOfStandardInput() : identityOf(input))) !== wanted) continue;
    const name = isStandard ? standardInputName : input;
    throw new InputError('output-is-input', out, outputIsInputSentence(name));
  }
}

/** What all names of one file share; undefined where there is none. */
async function identityOf(path: string): Promise<string | undefined> {
  const there = await stat(path, { bigint: true }).catch(() => undefined);
  return there && shared(there);
}

function identityOfStandardInput(): string {
  return shared(fstatSync(process.stdin.fd, { bigint: true }));
}

function shared({ dev, ino }: { readonly dev: bigint; readonly ino: bigint }): string {
  return `${dev}:${ino}`;
}
