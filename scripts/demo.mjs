// The main job, on the demo's recordings, with the built command line: what `npm start` shows.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const recordings = readdirSync(new URL('../examples/recordings/', import.meta.url))
  .filter((name) => name.endsWith('.csv'))
  .sort()
  .map((name) => `examples/recordings/${name}`);

const { status } = spawnSync(
  process.execPath,
  [
    'packages/cli/dist/truesweep.js',
    'score',
    '--short',
    ...recordings,
    '--job',
    'examples/outboard-sensor.job.json',
  ],
  { cwd: root, stdio: 'inherit' },
);
process.exitCode = status ?? 1;
