import type { FileAnswer, JudgedFile } from './judgedFile.js';

/**
 * All recordings, for what is made of every one of them.
 *
 * @throws InputError for the first that could not be judged.
 */
export async function allJudged(
  answers: AsyncIterable<FileAnswer>,
): Promise<readonly JudgedFile[]> {
  const judged: JudgedFile[] = [];
  for await (const answer of answers) {
    if ('refusal' in answer) throw answer.refusal;
    judged.push(answer);
  }
  return judged;
}
