// The top commands (`npm start`, `npm test`, …). Plain Node ≥ 20, no dependency: it runs before anything is installed.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { availableParallelism } from 'node:os';
import { delimiter, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const readJson = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));
const manifest = readJson('package.json');
const cache = join(root, 'node_modules', '.cache', 'truesweep');
const onWindows = process.platform === 'win32';

/** What runs now: it is ended where something beside it fails. */
const running = new Set();

/** Runs a program of the workspace; the pinned Node, the root's tools and those of `cwd` come first on PATH. */
function run(command, args, { cwd = root, show = false, env = {} } = {}) {
  const tools = [root, cwd].map((folder) => join(folder, 'node_modules', '.bin'));
  const child = spawn(command, args, {
    cwd,
    shell: onWindows,
    stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      ASTRO_TELEMETRY_DISABLED: '1',
      PATH: [...tools, process.env.PATH].join(delimiter),
      ...env,
    },
  });
  running.add(child);
  const said = { stdout: '', stderr: '' };
  for (const stream of show ? [] : ['stdout', 'stderr'])
    child[stream].setEncoding('utf8').on('data', (text) => {
      said[stream] += text;
    });
  return new Promise((done) => {
    const end = (status, error = '') => {
      running.delete(child);
      done({ ok: status === 0, status, log: `${said.stdout}${said.stderr}${error}` });
    };
    child.on('error', (error) => end(1, error));
    child.on('close', (status) => end(status ?? 1));
  });
}

function stop(sentence, log = '') {
  for (const child of running) child.kill();
  if (log) process.stderr.write(`\n${log.trimEnd()}\n`);
  process.stderr.write(`\n${sentence}\n`);
  process.exit(1);
}

/** What took how long, s, in the order in which it ended. */
const taken = [];

async function timed(title, work) {
  const begun = performance.now();
  const result = await work();
  taken.push([title, (performance.now() - begun) / 1000]);
  return result;
}

/** One line for a step that worked; its log and a sentence for one that did not. */
async function step(title, failure, work) {
  const begun = performance.now();
  const result = await timed(title, work);
  if (!result.ok) stop(failure, result.log);
  process.stderr.write(`${title} (${((performance.now() - begun) / 1000).toFixed(1)} s)\n`);
}

/** The parts with their seconds, of which some ran beside each other, and the whole beside what it shall take. */
function printTaken(goal) {
  const whole = performance.now() / 1000;
  const lines = taken.map(([title, seconds]) => `${seconds.toFixed(1).padStart(7)} s  ${title}`);
  process.stdout.write(
    `\n${lines.join('\n')}\n${whole.toFixed(1).padStart(7)} s  in all, some beside each other (goal: ${goal} s on two processors)\n`,
  );
}

function pnpm(command) {
  const quoted = onWindows ? `"pnpm ${command}"` : `pnpm ${command}`;
  const args = ['--yes', '--prefer-offline', `--package=${manifest.packageManager}`, '-c', quoted];
  return run('npx', args, { env: { CI: 'true', npm_config_loglevel: 'error' } });
}

async function install() {
  await step(
    'Dependencies installed',
    'Installing the dependencies failed; the log is above. It needs the npm registry once.',
    () => pnpm('install --frozen-lockfile --prefer-offline'),
  );
}

const notInputs = new Set(['node_modules', 'dist', '.astro']);

function addFiles(hash, path) {
  if (statSync(path).isDirectory()) {
    for (const name of readdirSync(path).sort())
      if (!notInputs.has(name)) addFiles(hash, join(path, name));
  } else {
    hash.update(path.slice(root.length)).update('\0').update(readFileSync(path)).update('\0');
  }
}

/** A name for the contents of these files and folders together. */
function contentKey(paths, others = []) {
  const hash = createHash('sha256');
  for (const path of paths) if (existsSync(join(root, path))) addFiles(hash, join(root, path));
  for (const other of others) hash.update(other);
  return hash.digest('hex');
}

/** Builds a folder unless its `dist` was built from exactly these inputs. */
async function buildFolder(folder, key) {
  const stamp = join(cache, `built-${folder.replaceAll('/', '-')}`);
  const dist = join(root, folder, 'dist');
  if (existsSync(dist) && existsSync(stamp) && readFileSync(stamp, 'utf8') === key) return;
  rmSync(stamp, { force: true });
  await step(`Built ${folder}`, `Building ${folder} failed; the log is above.`, () =>
    folder === 'site'
      ? run('astro', ['build'], { cwd: join(root, folder) })
      : run('tsup', [], { cwd: join(root, folder) }),
  );
  mkdirSync(cache, { recursive: true });
  writeFileSync(stamp, key);
}

/** What every package is built with, beside its own folder. */
const buildInputs = [
  'pnpm-lock.yaml',
  'tsconfig.base.json',
  'scripts/packageBuild.ts',
  'scripts/writeDeclarations.ts',
];

/** Builds a package after the workspace packages that it depends on; returns the key of what was built. */
async function buildPackage(name, built) {
  const known = built.get(name);
  if (known) return known;
  const folder = `packages/${name.slice('@truesweep/'.length)}`;
  const dependencies = [];
  for (const dependency of Object.keys(readJson(`${folder}/package.json`).dependencies ?? {}))
    if (dependency.startsWith('@truesweep/'))
      dependencies.push(await buildPackage(dependency, built));
  const key = contentKey([folder, ...buildInputs], dependencies);
  await buildFolder(folder, key);
  built.set(name, key);
  return key;
}

async function buildPackages() {
  const built = new Map();
  for (const folder of readdirSync(join(root, 'packages')).sort())
    await buildPackage(`@truesweep/${folder}`, built);
}

async function buildSite() {
  await buildFolder(
    'site',
    contentKey([
      'site',
      'packages',
      'examples',
      'pnpm-lock.yaml',
      'tsconfig.base.json',
      'tsconfig.json',
    ]),
  );
}

/** Packs every package as it would be published, anew; returns the tarballs' paths. */
async function packPackages() {
  const folder = join(root, 'dist');
  rmSync(folder, { recursive: true, force: true });
  await step('Packed', 'Packing failed; the log is above.', () =>
    pnpm(`--filter "./packages/*" exec pnpm pack --pack-destination "${folder}"`),
  );
  return readdirSync(folder)
    .sort()
    .map((name) => join(folder, name));
}

async function checkNode() {
  const wanted = `v${manifest.devDependencies.node}`;
  const found = (await run('node', ['-p', 'process.version'])).log.trim();
  if (found !== wanted)
    stop(`The tests run on Node ${wanted}, but the workspace's Node is ${found || 'missing'}.`);
}

async function check(title, failure, command, args) {
  await step(title, failure, () => run(command, args));
}

/** Runs vitest projects in the open, `workers` files at once, and returns how many tests passed, failed and were skipped. */
async function runTests({ projects, workers = availableParallelism(), env = {} }) {
  const report = join(cache, `tests-${projects[0]}.json`);
  rmSync(report, { force: true });
  const result = await run(
    'vitest',
    [
      'run',
      ...projects.flatMap((project) => ['--project', project]),
      `--maxWorkers=${workers}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { show: true, env: { CI: 'true', ...env } },
  );
  if (!existsSync(report)) stop(`The tests (${projects.join(', ')}) did not run to their end.`);
  const counts = JSON.parse(readFileSync(report, 'utf8'));
  printSlowest(counts.testResults);
  return {
    ok: result.ok,
    passed: counts.numPassedTests,
    // An error outside any test, such as a browser that doesn't start, must not read as none failed.
    failed: counts.numFailedTests || (result.ok ? 0 : 1),
    skipped: counts.numPendingTests + counts.numTodoTests,
  };
}

/** The files of tests that took longest: where time can be won. */
function printSlowest(results) {
  const files = results
    .map(({ name, startTime, endTime }) => [relative(root, name), (endTime - startTime) / 1000])
    .sort((one, other) => other[1] - one[1])
    .slice(0, 8);
  const lines = files.map(([name, seconds]) => `${seconds.toFixed(1).padStart(7)} s  ${name}`);
  process.stdout.write(`Slowest:\n${lines.join('\n')}\n`);
}

/** Runs groups of test projects until one fails, and closes with the summed counts. */
async function runGroups(groups) {
  const sum = { passed: 0, failed: 0, skipped: 0 };
  let ok = true;
  for (const { before, ...group } of groups) {
    await before?.();
    const counts = await timed(`Tests: ${group.projects.join(', ')}`, () => runTests(group));
    sum.passed += counts.passed;
    sum.failed += counts.failed;
    sum.skipped += counts.skipped;
    ok = counts.ok;
    if (!ok) break;
  }
  const skipped = sum.skipped > 0 ? `, ${sum.skipped} skipped` : '';
  process.stdout.write(`\n${sum.passed} passed, ${sum.failed} failed${skipped}\n`);
  if (!ok) stop('The tests failed; what follows the failing group was not run.');
  if (sum.passed === 0) stop('No test ran.');
}

const ofSources = ['unit', 'types', 'properties', 'reference', 'corpus', 'examples'];

/** Everything that is checked without being run, but for the types. */
async function checkRest() {
  await check('Format and lint clean', 'Biome found something; try `npm run fix`.', 'biome', [
    'ci',
    '--colors=off',
  ]);
  await check('No unused file, export or dependency', 'Knip found something unused.', 'knip', []);
  await check('Spelling clean', 'A word is misspelt, or is to be added to cspell.json.', 'cspell', [
    'lint',
    '--no-progress',
    '--no-color',
  ]);
}

const commands = {
  async start() {
    await install();
    await buildPackage('@truesweep/cli', new Map());
    const demo = [join(root, 'scripts', 'demo.mjs')];
    process.exitCode = (await run(process.execPath, demo, { show: true })).status;
  },

  async test() {
    await install();
    await checkNode();
    // The type check takes one processor as long as the rest the other.
    await Promise.all([
      check('Types clean', 'The type check failed.', 'tsc', ['-p', 'tsconfig.json']),
      checkRest().then(buildPackages),
    ]);
    const site = buildSite();
    await runGroups([
      {
        projects: [
          ...ofSources,
          'controller',
          'live',
          'batch',
          'history',
          'queue',
          'package',
          'docs',
        ],
        env: { TRUESWEEP_BUILT_CORE: '1' },
      },
      // Pages wait for a hand that rests, so that one more file than there are processors keeps them busy.
      { before: () => site, projects: ['browser'], workers: availableParallelism() + 1 },
    ]);
    printTaken(480);
  },

  async soak() {
    await install();
    await checkNode();
    await buildPackages();
    await buildSite();
    const env = { TRUESWEEP_SOAK: '20' };
    await runGroups([
      { projects: [...ofSources, 'batch', 'history', 'queue'], env },
      { projects: ['browser'], workers: availableParallelism() + 1, env },
    ]);
  },

  async bench() {
    await install();
    await checkNode();
    await buildPackages();
    // Built anew, so that its time is told; the goal is 60 s on two processors.
    rmSync(join(cache, 'built-site'), { force: true });
    await buildSite();
    const report = join(cache, 'bench.json');
    rmSync(report, { force: true });
    const { status } = await run(
      'vitest',
      [
        'bench',
        '--run',
        '--project=bench*',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
      ],
      { show: true },
    );
    if (!existsSync(report)) stop('The benches did not run to their end.');
    process.stdout.write(`\nResults saved in ${relative(root, report)}\n`);
    process.exitCode = status;
  },

  async pack() {
    await install();
    await buildPackages();
    const files = await packPackages();
    process.stdout.write(
      `\nIn a project of yours:\n\nnpm install ${files.map((file) => `"${file}"`).join(' ')}\n`,
    );
  },

  async pictures() {
    await install();
    await checkNode();
    await buildPackages();
    await buildSite();
    await runGroups([{ projects: ['pictures'] }]);
  },

  async site() {
    await install();
    await buildPackages();
    await buildSite();
    const preview = run('astro', ['preview'], { cwd: join(root, 'site'), show: true });
    process.exitCode = (await preview).status;
  },

  async fix() {
    await install();
    process.exitCode = (await run('biome', ['check', '--write'], { show: true })).status;
  },
};

const command = commands[process.argv[2]];
if (!command) stop(`Give one of: ${Object.keys(commands).join(', ')}.`);
await command();
