#!/usr/bin/env node
import { visibleText } from '@truesweep/wording';
import { failedCode } from './exitCodes.js';
import { leaveUnprinted } from './leaveUnprinted.js';
import { liveScreen, terminalKeys } from './live/liveScreen.js';
import { onInterrupt } from './live/onInterrupt.js';
import { printTo } from './printTo.js';
import { run } from './run.js';
import { terminalOf } from './terminalOf.js';
import { terminalQuestions } from './terminalQuestions.js';

process.stdout.on('error', leaveUnprinted);
// Who can't be told what was wrong still gets the exit code.
process.stderr.on('error', () => {});

const printError = (text: string) => process.stderr.write(text);

process.exitCode = await run(process.argv.slice(2), {
  ...terminalOf(process.stdout, process.env),
  print: printTo(process.stdout, leaveUnprinted),
  printError,
  ...(process.stdin.isTTY && process.stderr.isTTY && { questions: terminalQuestions }),
  ...(process.stderr.isTTY && {
    screen: (onKey: (key: string) => void) => liveScreen(process.stderr, terminalKeys(), onKey),
  }),
  onInterrupt,
}).catch((error: unknown) => {
  printError(visibleText(`${error instanceof Error ? error.stack : error}\n`, '\n'));
  return failedCode;
});
