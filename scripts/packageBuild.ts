import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Options } from 'tsup';
import { writeDeclarations } from './writeDeclarations.js';

/** How a package is built. */
interface PackageBuild {
  /** Files of `src` that are entries, without their ending. */
  readonly entries: readonly string[];
  /** Those that have a bundle of their own for `require`; the others hand on what `index.cjs` holds, so that there is each class once. */
  readonly bundledForRequire?: readonly string[];
  /** Entries that share nothing with the others, because other modules take the place of some that they import: name and file. */
  readonly replaced?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** The file of `src` that the file for pages without a bundler has everything of. */
  readonly browser?: string;
  /** Packages of truesweep that stand in that file, because theirs offers something else. */
  readonly inBrowserFile?: readonly string[];
  /** What else is written into `dist`, by name. */
  readonly texts?: Readonly<Record<string, () => string>>;
}

const common = {
  target: 'node20',
  silent: true,
  sourcemap: true,
  // The maps lead to `src`, which is published too; the text is not held a second time.
  esbuildOptions: (options) => {
    options.sourcesContent = false;
  },
} satisfies Options;

/**
 * A library as ES modules that share what they have in common and for `require`, with source maps; as one minified ES module for a page
 * without a bundler; its declarations, with maps, for either kind of import.
 */
export function packageBuild(build: PackageBuild): Options[] {
  const { replaced = {}, browser = 'index', inBrowserFile = [], texts = {} } = build;
  const entries = build.entries.filter((name) => !(name in replaced));
  const { bundledForRequire = entries } = build;
  const folder = process.cwd();
  const { optionalDependencies = {} } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  ) as { optionalDependencies?: object };
  // The bundler leaves only those out that are not optional.
  const external = Object.keys(optionalDependencies);
  const dist = join(folder, 'dist');
  rmSync(dist, { recursive: true, force: true });
  const sources = (names: readonly string[]) =>
    Object.fromEntries(names.map((name) => [name, `src/${name}.ts`]));
  return [
    {
      ...common,
      external,
      entry: sources(entries),
      format: 'esm',
      onSuccess: async () => {
        const values = writeDeclarations(folder, build.entries);
        for (const name of entries)
          if (!bundledForRequire.includes(name))
            writeFileSync(join(dist, `${name}.cjs`), handedOn(values.get(name) ?? []));
        for (const [name, text] of Object.entries(texts)) writeFileSync(join(dist, name), text());
      },
    },
    { ...common, external, entry: sources(bundledForRequire), format: 'cjs' },
    ...Object.entries(replaced).map(
      ([name, files]): Options => ({
        ...common,
        entry: sources([name]),
        format: ['esm', 'cjs'],
        noExternal: Object.keys(files),
        esbuildPlugins: [inPlaceOf(files)],
      }),
    ),
    browserBuild(browser, inBrowserFile, replaced[browser]),
  ];
}

/** Other makers' code is inside; truesweep's own packages are fetched from beside this one, so that a page has each once. */
function browserBuild(
  entry: string,
  inside: readonly string[],
  replaced: Readonly<Record<string, string>> = {},
): Options {
  return {
    ...common,
    entry: { browser: `src/${entry}.ts` },
    format: 'esm',
    target: 'es2022',
    platform: 'browser',
    minify: true,
    // Other makers' sources are not published with it; `index.js` is the file to read and to trace.
    sourcemap: false,
    noExternal: [/./],
    outExtension: () => ({ js: '.min.js' }),
    esbuildPlugins: [
      inPlaceOf(replaced),
      {
        name: 'beside',
        setup: ({ onResolve }) => {
          onResolve({ filter: /^@truesweep\// }, ({ path }) => {
            if (inside.includes(path)) return null;
            return { path: `../../${path.split('/')[1]}/dist/browser.min.js`, external: true };
          });
        },
      },
    ],
  };
}

/** Takes these files for the modules of these names. */
function inPlaceOf(
  files: Readonly<Record<string, string>>,
): NonNullable<Options['esbuildPlugins']>[number] {
  return {
    name: 'in place of',
    setup: ({ onResolve }) => {
      for (const [name, file] of Object.entries(files))
        onResolve({ filter: new RegExp(`^${name}$`) }, () => ({ path: resolve(file) }));
    },
  };
}

/** A module for `require` with these names of `index.cjs`. */
function handedOn(names: readonly string[]): string {
  return `const all = require('./index.cjs');\n${names.map((name) => `exports.${name} = all.${name};\n`).join('')}`;
}
