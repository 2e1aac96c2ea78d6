import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Reads a file as the command line does, in a process of its own: its memory is nobody else's, and its mark of the highest never falls. */
const reading = `
import { readFileSync, statSync } from 'node:fs';
import { parseJob, readJobPieces } from '@truesweep/jobs';
import { filePieces } from '@truesweep/jobs/node';
const [file, jobFile] = process.argv.slice(1);
const job = parseJob(JSON.parse(readFileSync(jobFile, 'utf8')));
const before = process.memoryUsage.rss();
const begun = performance.now();
const { sweep } = await readJobPieces(filePieces(file), { file }, job, { size: statSync(file).size });
const seconds = (performance.now() - begun) / 1000;
const grown = process.resourceUsage().maxRSS * 1024 - before;
console.log(JSON.stringify({ rows: sweep.time.length, grown, seconds }));
`;

/** What reading a long text in pieces takes. */
export interface PiecesRead {
  readonly megabytes: number;
  readonly rows: number;
  /** By how much the process's memory rose at most, over what the samples take: two numbers of 8 bytes a row. */
  readonly memory: number;
  /** s */
  readonly seconds: number;
}

const here = fileURLToPath(new URL('.', import.meta.url));
const job = fileURLToPath(new URL('../../examples/outboard-sensor.job.json', import.meta.url));

/** Reads texts of so many megabytes each, one after the other; of several rounds the fastest and the least memory. */
export function readInPieces(sizes: readonly number[], rounds: number): readonly PiecesRead[] {
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-long-'));
  const file = join(folder, 'long.csv');
  const all = sizes.map((megabytes) => {
    writeRows(file, megabytes * 1e6);
    const told = Array.from({ length: rounds }, () => {
      const args = ['--input-type=module', '--eval', reading, file, job];
      const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: here, encoding: 'utf8' });
      if (stdout === '') throw new Error(stderr);
      return JSON.parse(stdout) as { rows: number; grown: number; seconds: number };
    });
    const { rows } = told[0]!;
    return {
      megabytes,
      rows,
      memory: Math.min(...told.map(({ grown }) => grown)) / (16 * rows),
      seconds: Math.min(...told.map(({ seconds }) => seconds)),
    };
  });
  rmSync(folder, { recursive: true });
  return all;
}

/** Two columns: times to a tenth of a millisecond, volts to the millivolt. */
function writeRows(path: string, bytes: number): void {
  const file = openSync(path, 'w');
  let written = writeSync(file, 'time (s),wiper (V)\n');
  for (let row = 0; written < bytes; ) {
    let text = '';
    for (let k = 0; k < 20_000; k++, row++) {
      text += `${(row / 10_000).toFixed(4)},${(2 + 1.9 * Math.sin(row / 5000)).toFixed(3)}\n`;
    }
    written += writeSync(file, text);
  }
  closeSync(file);
}
