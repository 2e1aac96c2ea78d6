#!/usr/bin/env node
import { run } from './run.js';
import { terminalOf } from './terminalOf.js';

// The reader of a pipe may leave early, as `head` does.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

process.exitCode = await run(process.argv.slice(2), {
  ...terminalOf(process.stdout, process.env),
  print: (text) => process.stdout.write(text),
  printError: (text) => process.stderr.write(text),
});
