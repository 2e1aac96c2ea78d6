#!/usr/bin/env node
import { run } from './run.js';

process.exitCode = await run(process.argv.slice(2), {
  print: (text) => process.stdout.write(text),
  printError: (text) => process.stderr.write(text),
});
