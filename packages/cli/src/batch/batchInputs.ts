import { lstat, stat } from 'node:fs/promises';
import { basename, extname, join, relative, resolve } from 'node:path';
import { InputError } from '@truesweep/core';
import {
  folderNamedSentence,
  manifestTwiceSentence,
  nothingMatchesSentence,
} from '@truesweep/wording';
import picomatch from 'picomatch';
import type { BatchInput } from './batchInput.js';
import { filesBelow } from './filesBelow.js';
import { manifestInputs } from './manifestInputs.js';

/** What a batch is given. */
export interface BatchSources {
  /** Files, folders and patterns. */
  readonly paths: readonly string[];
  readonly manifest?: string;
  /** What the batch writes itself, which is no recording: whole paths. */
  readonly outputs: readonly string[];
}

/** Files of a folder that are taken for recordings; others are named one by one or by a pattern. */
const endings = ['.csv', '.tsv', '.txt', '.dat', '.log', '.asc', '.wav'];

/**
 * The recordings that a batch is given, each once, found as they are asked for. Of each no more than its path is kept, to know it again.
 *
 * @throws InputError for a pattern that nothing matches, or a manifest that can't be read.
 */
export async function* batchInputs({
  paths,
  manifest,
  outputs,
}: BatchSources): AsyncGenerator<BatchInput> {
  const seen = new Set<string>(outputs);
  const all = async function* (): AsyncGenerator<BatchInput> {
    if (manifest !== undefined) yield* manifestInputs(manifest);
    for (const path of paths) yield* inputsOf(path);
  };
  for await (const input of all()) {
    const whole = resolve(input.file);
    if (seen.has(whole)) {
      if (manifest !== undefined && input.line !== undefined) yield namedTwice(manifest, input);
      continue;
    }
    seen.add(whole);
    yield input;
  }
}

/** What a manifest tells of a recording a second time would be lost without a word. */
function namedTwice(manifest: string, { file, line = 1 }: BatchInput): BatchInput {
  const place = { line, column: 1 };
  const refusal = new InputError('duplicate', manifest, manifestTwiceSentence(file), place);
  return { file: `${manifest}, line ${line}`, refusal };
}

async function* inputsOf(path: string): AsyncGenerator<BatchInput> {
  const there = await stat(path).catch(() => undefined);
  if (there?.isDirectory()) yield* recordingsBelow(path);
  else if (there ?? (await lstat(path).catch(() => undefined))) yield { file: path };
  else if (picomatch.scan(path).isGlob) yield* matching(path);
  else yield { file: path };
}

async function* recordingsBelow(folder: string): AsyncGenerator<BatchInput> {
  for await (const { isFolder, ...found } of filesBelow(folder)) {
    if (found.refusal) yield found;
    else if (endings.includes(extname(found.file).toLowerCase())) {
      yield isFolder ? namedLikeOne(found.file) : found;
    }
  }
}

function namedLikeOne(file: string): BatchInput {
  return { file, refusal: new InputError('not-a-file', file, folderNamedSentence) };
}

async function* matching(pattern: string): AsyncGenerator<BatchInput> {
  const { base, glob } = picomatch.scan(pattern);
  const matches = picomatch(glob);
  const folder = base === '' ? '.' : base;
  // Without stars for folders nothing lies deeper than the pattern has parts.
  const depth = glob.includes('**') ? Number.POSITIVE_INFINITY : glob.split('/').length;
  const parts = (file: string) => relative(folder, file).split(/[\\/]/);
  let isAny = false;
  for await (const { isFolder, ...found } of filesBelow(
    folder,
    (one) => parts(one).length < depth,
  )) {
    const isMatch = matches(parts(found.file).join('/'));
    if (!found.refusal && (!isMatch || isFolder)) continue;
    isAny ||= isMatch;
    yield base === '' ? { ...found, file: join(found.file) } : found;
  }
  if (isAny) return;
  throw new InputError('missing-file', pattern, nothingMatchesSentence(basename(pattern)));
}
