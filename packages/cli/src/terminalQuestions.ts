import { createInterface } from 'node:readline/promises';
import type { Questions } from './terminal.js';

/** Questions on the terminal: asked on its error output, so that what a command prints can go elsewhere. */
export function terminalQuestions(): Questions {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  const closed = new Promise<undefined>((resolve) => {
    lines.once('close', () => resolve(undefined));
  });
  return {
    ask: (question) => Promise.race([lines.question(question).catch(() => undefined), closed]),
    end: () => lines.close(),
  };
}
