import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * A module that every process of a worker loads before the program. It does something when a recording of a certain name is opened, in the midst of judging, as no
 * recording of its own does: the program beside it is the one that is published.
 *
 * `fatal…` ends the process, `greedy…` asks for memory until there is none, `endless…` computes for ever, `slow…` for four seconds, `deadly…` ends the worker as a whole.
 * Each opening is noted in `openings.txt`.
 *
 * @returns What the environment of the worker needs.
 */
export function faultyOpening(folder: string): { readonly NODE_OPTIONS: string } {
  const path = join(folder, 'faultyOpening.mjs');
  writeFileSync(
    path,
    `import fs from 'node:fs';
import { basename } from 'node:path';
import { syncBuiltinESMExports } from 'node:module';
const { openSync, appendFileSync } = fs;
fs.openSync = (path, ...more) => {
  const name = basename(String(path));
  if (name.endsWith('.csv')) appendFileSync(${JSON.stringify(join(folder, 'openings.txt'))}, name + '\\n');
  if (name.startsWith('fatal')) process.kill(process.pid, 'SIGSEGV');
  if (name.startsWith('deadly')) for (const id of [process.ppid, process.pid]) process.kill(id, 'SIGKILL');
  if (name.startsWith('greedy')) for (const kept = []; ; ) kept.push(new Array(1e6).fill(Math.random()));
  if (name.startsWith('endless')) for (;;);
  if (name.startsWith('slow')) for (const end = Date.now() + 4000; Date.now() < end; );
  return openSync(path, ...more);
};
syncBuiltinESMExports();
`,
  );
  return { NODE_OPTIONS: `--import ${path}` };
}
