#!/usr/bin/env node
import { run } from './run.js';
import { withoutSecrets } from './withoutSecrets.js';

process.stdout.on('error', () => process.exit(3));
// Who can't be told what was wrong still gets the exit code.
process.stderr.on('error', () => {});

const tell = (sentence: string) => {
  process.stderr.write(`truesweep-queue: ${withoutSecrets(sentence, process.env)}\n`);
};

let onEnd: (() => void) | undefined;
let isLasting = false;
for (const [signal, code] of [
  ['SIGTERM', 143],
  ['SIGINT', 130],
] as const) {
  process.on(signal, () => {
    // The second time, or where nothing is to be finished, at once.
    if (!onEnd) process.exit(code);
    onEnd();
    onEnd = undefined;
  });
}

process.exitCode = await run(process.argv.slice(2), {
  env: process.env,
  print: (text) => process.stdout.write(withoutSecrets(text, process.env)),
  printError: (text) => process.stderr.write(withoutSecrets(text, process.env)),
  tell,
  onEnd: (work) => {
    isLasting = true;
    onEnd = work;
  },
}).catch((error: unknown) => {
  tell(String((error instanceof Error && error.stack) || error));
  return 1;
});

// Where Redis is gone, what the library still waits for would keep the program for ever.
if (isLasting) process.exit();
