// The top commands (`npm start`, `npm test`, …). Plain Node ≥ 20, no dependency: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
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
import { delimiter, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const readJson = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));
const manifest = readJson('package.json');
const cache = join(root, 'node_modules', '.cache', 'truesweep');
const onWindows = process.platform === 'win32';

/** Runs a program of the workspace; the pinned Node, the root's tools and those of `cwd` come first on PATH. */
function run(command, args, { cwd = root, show = false, env = {} } = {}) {
  const tools = [root, cwd].map((folder) => join(folder, 'node_modules', '.bin'));
  const result = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
    shell: onWindows,
    stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      ASTRO_TELEMETRY_DISABLED: '1',
      PATH: [...tools, process.env.PATH].join(delimiter),
      ...env,
    },
  });
  return {
    ok: result.status === 0,
    status: result.status ?? 1,
    log: `${result.stdout ?? ''}${result.stderr ?? ''}${result.error ?? ''}`,
  };
}

function stop(sentence, log = '') {
  if (log) process.stderr.write(`\n${log.trimEnd()}\n`);
  process.stderr.write(`\n${sentence}\n`);
  process.exit(1);
}

/** What took how long, s, in order. */
const taken = [];

function timed(title, work) {
  const begun = performance.now();
  const result = work();
  taken.push([title, (performance.now() - begun) / 1000]);
  return result;
}

/** One line for a step that worked; its log and a sentence for one that did not. */
function step(title, failure, work) {
  const result = timed(title, work);
  if (!result.ok) stop(failure, result.log);
  process.stderr.write(`${title} (${taken.at(-1)[1].toFixed(1)} s)\n`);
}

/** The parts with their seconds, and the whole beside what it shall take. */
function printTaken(goal) {
  const whole = taken.reduce((sum, [, seconds]) => sum + seconds, 0);
  const lines = taken.map(([title, seconds]) => `${seconds.toFixed(1).padStart(7)} s  ${title}`);
  process.stdout.write(
    `\n${lines.join('\n')}\n${whole.toFixed(1).padStart(7)} s  in all (goal: ${goal} s on two processors)\n`,
  );
}

function pnpm(command) {
  const quoted = onWindows ? `"pnpm ${command}"` : `pnpm ${command}`;
  const args = ['--yes', '--prefer-offline', `--package=${manifest.packageManager}`, '-c', quoted];
  return run('npx', args, { env: { CI: 'true', npm_config_loglevel: 'error' } });
}

function install() {
  step(
    'Dependencies installed',
    'Installing the dependencies failed; the log is above. It needs the npm registry once.',
    () => pnpm('install --frozen-lockfile --prefer-offline'),
  );
}

const notInputs = new Set(['node_modules', 'dist', '.astro', 'reference']);

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
function buildFolder(folder, key) {
  const stamp = join(cache, `built-${folder.replaceAll('/', '-')}`);
  const dist = join(root, folder, 'dist');
  if (existsSync(dist) && existsSync(stamp) && readFileSync(stamp, 'utf8') === key) return;
  rmSync(stamp, { force: true });
  step(`Built ${folder}`, `Building ${folder} failed; the log is above.`, () =>
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
function buildPackage(name, built) {
  const known = built.get(name);
  if (known) return known;
  const folder = `packages/${name.slice('@truesweep/'.length)}`;
  const dependencies = Object.keys(readJson(`${folder}/package.json`).dependencies ?? {})
    .filter((dependency) => dependency.startsWith('@truesweep/'))
    .map((dependency) => buildPackage(dependency, built));
  const key = contentKey([folder, ...buildInputs], dependencies);
  buildFolder(folder, key);
  built.set(name, key);
  return key;
}

function buildPackages() {
  const built = new Map();
  for (const folder of readdirSync(join(root, 'packages')).sort())
    buildPackage(`@truesweep/${folder}`, built);
  return built;
}

function buildSite() {
  buildFolder(
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
function packPackages() {
  const folder = join(root, 'dist');
  rmSync(folder, { recursive: true, force: true });
  step('Packed', 'Packing failed; the log is above.', () =>
    pnpm(`--filter "./packages/*" exec pnpm pack --pack-destination "${folder}"`),
  );
  return readdirSync(folder)
    .sort()
    .map((name) => join(folder, name));
}

function checkNode() {
  const wanted = `v${manifest.devDependencies.node}`;
  const found = run('node', ['-p', 'process.version']).log.trim();
  if (found !== wanted)
    stop(`The tests run on Node ${wanted}, but the workspace's Node is ${found || 'missing'}.`);
}

function check(title, failure, command, args) {
  step(title, failure, () => run(command, args));
}

/** Runs vitest projects in the open and returns how many tests passed, failed and were skipped. */
function runTests(projects, env = {}) {
  const report = join(cache, `tests-${projects[0]}.json`);
  rmSync(report, { force: true });
  const result = run(
    'vitest',
    [
      'run',
      ...projects.flatMap((project) => ['--project', project]),
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
function runGroups(groups) {
  const sum = { passed: 0, failed: 0, skipped: 0 };
  let ok = true;
  for (const { before, projects, env } of groups) {
    before?.();
    const counts = timed(`Tests: ${projects.join(', ')}`, () => runTests(projects, env));
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

const commands = {
  start() {
    install();
    buildPackage('@truesweep/cli', new Map());
    process.exitCode = run(process.execPath, [join(root, 'scripts', 'demo.mjs')], {
      show: true,
    }).status;
  },

  test() {
    install();
    checkNode();
    check('Format and lint clean', 'Biome found something; try `npm run fix`.', 'biome', [
      'ci',
      '--colors=off',
    ]);
    check('Types clean', 'The type check failed.', 'tsc', ['-p', 'tsconfig.json']);
    check('No unused file, export or dependency', 'Knip found something unused.', 'knip', []);
    check('Spelling clean', 'A word is misspelt, or is to be added to cspell.json.', 'cspell', [
      'lint',
      '--no-progress',
      '--no-color',
    ]);
    runGroups([
      { projects: ofSources },
      { before: buildPackages, projects: ['package', 'docs'] },
      { before: buildSite, projects: ['browser'] },
    ]);
    printTaken(480);
  },

  soak() {
    install();
    checkNode();
    runGroups([{ projects: ofSources, env: { TRUESWEEP_SOAK: '20' } }]);
  },

  bench() {
    install();
    checkNode();
    buildPackages();
    // Built anew, so that its time is told; the goal is 60 s on two processors.
    rmSync(join(cache, 'built-site'), { force: true });
    buildSite();
    const report = join(cache, 'bench.json');
    rmSync(report, { force: true });
    const { status } = run(
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

  pack() {
    install();
    buildPackages();
    const files = packPackages();
    process.stdout.write(
      `\nIn a project of yours:\n\nnpm install ${files.map((file) => `"${file}"`).join(' ')}\n`,
    );
  },

  site() {
    install();
    buildPackages();
    buildSite();
    process.exitCode = run('astro', ['preview'], { cwd: join(root, 'site'), show: true }).status;
  },

  fix() {
    install();
    process.exitCode = run('biome', ['check', '--write'], { show: true }).status;
  },
};

const command = commands[process.argv[2]];
if (!command) stop(`Give one of: ${Object.keys(commands).join(', ')}.`);
command();
