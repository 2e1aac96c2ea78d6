#!/usr/bin/env node
import { leaveUnprinted } from './leaveUnprinted.js';
import { printTo } from './printTo.js';
import { run } from './run.js';
import { terminalOf } from './terminalOf.js';

process.stdout.on('error', leaveUnprinted);
// Who can't be told what was wrong still gets the exit code.
process.stderr.on('error', () => {});

process.exitCode = await run(process.argv.slice(2), {
  ...terminalOf(process.stdout, process.env),
  print: printTo(process.stdout, leaveUnprinted),
  printError: (text) => process.stderr.write(text),
});
