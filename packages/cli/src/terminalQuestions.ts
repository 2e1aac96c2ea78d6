import { createInterface } from 'node:readline/promises';
import type { Questions } from './terminal.js';

/** Questions on the terminal: asked on its error output, so that what a command prints can go elsewhere. */
export function terminalQuestions(): Questions {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  const closed = new Promise<undefined>((resolve) => {
    lines.once('close', () => resolve(undefined));
  });
  return {
    ask: async (question) => {
      const answer = await Promise.race([lines.question(question).catch(() => undefined), closed]);
      // What is said next begins a line of its own.
      if (answer === undefined) process.stderr.write('\n');
      return answer;
    },
    end: () => lines.close(),
  };
}
