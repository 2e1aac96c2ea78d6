import { fileURLToPath } from 'node:url';
import preact from '@astrojs/preact';
import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';

import { offline } from './integrations/offline.mjs';
import { securityPolicy } from './integrations/securityPolicy.mjs';
import { lessonPages } from './src/lessons/lessonPages.ts';
import { libraries } from './src/reference/tasks.ts';

const fromRoot = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** What nearly every form needs. */
const ofForms =
  /core\/src\/(errors|fields|noMoreThan|nearest|inputErrorCode|quantity)|wording\/src\/(say|whole|formWords)|site\/src\/forms/;

/** What reads and judges a recording, without what only one that runs needs. */
const ofJudging = /(core|recordings)\/src\/(?!live\/)|jobs\/src\/(?!watchSweep)|wording\/src/;

export default defineConfig({
  vite: {
    build: {
      rolldownOptions: {
        output: {
          codeSplitting: {
            // What nearly every form needs stands in few files: many small ones compress badly, and each is asked for by itself.
            groups: [
              { name: 'preact', test: /node_modules\/\.pnpm\/(preact@|@astrojs\+preact)/ },
              { name: 'base', test: ofForms, minShareCount: 12 },
              { name: 'circuit', test: /core\/src\/(circuit|expectation)/, minShareCount: 14 },
            ],
          },
        },
      },
    },
    // In modules, so that a worker too loads what it seldom needs only then.
    worker: {
      format: 'es',
      rolldownOptions: {
        output: {
          codeSplitting: {
            // What judging and watching both need is one file, not one for each of their parts.
            groups: [{ name: 'judging', test: ofJudging, minShareCount: 2 }],
          },
        },
      },
    },
    resolve: {
      // The sources, module by module: a page then takes only what it uses, where the built packages are one file each.
      alias: [
        { find: '@preact/signals', replacement: fromRoot('site/integrations/noSignals.mjs') },
        { find: /^@truesweep\/(\w+)$/, replacement: fromRoot('packages/$1/src/index.ts') },
        { find: /^@truesweep\/(\w+)\/(\w+)$/, replacement: fromRoot('packages/$1/src/$2.ts') },
      ],
    },
  },
  // The folder of the address below which the site is served.
  base: process.env.TRUESWEEP_BASE ?? '/truesweep',
  trailingSlash: 'always',
  integrations: [
    starlight({
      title: 'truesweep',
      description: 'Bench testing of engine-management position sensors.',
      customCss: [
        'theme',
        'forms',
        'judging',
        'way',
        'shelf',
        'history',
        'watching',
        'documentation',
        'lessons',
        'print',
      ].map((name) => `./src/styles/${name}.css`),
      components: {
        Search: './src/search/Search.astro',
        PageTitle: './src/search/PageTitle.astro',
        MarkdownContent: './src/formulas/MarkdownContent.astro',
      },
      routeMiddleware: './src/navigation/unfoldOwnGroup.ts',
      sidebar: [
        { label: 'The job', link: '/' },
        { slug: 'cautions' },
        { slug: 'guided-way' },
        { slug: 'gallery' },
        { slug: 'shelf' },
        { slug: 'history' },
        {
          label: 'Calculators',
          items: [
            { slug: 'calculators', label: 'All calculators' },
            { slug: 'calculators/find-the-terminals', label: 'Find the terminals' },
            { slug: 'calculators/plan-the-hook-up', label: 'Plan the hook-up' },
            { slug: 'calculators/expected-readings', label: 'Expected readings' },
            { slug: 'calculators/which-instrument', label: 'Which instrument' },
            { slug: 'calculators/make-dirt-visible', label: 'Make dirt visible' },
            { slug: 'calculators/watch-a-sweep', label: 'Watch a sweep' },
            { slug: 'calculators/check-a-sweep', label: 'Judge a recording' },
            { slug: 'calculators/set-the-closed-position', label: 'Set the closed position' },
            { slug: 'calculators/supply-and-ground-drop', label: 'Supply and ground drop' },
            { slug: 'calculators/bench-to-vehicle', label: 'Bench to vehicle' },
          ],
        },
        {
          label: 'Other sensors',
          items: [
            { slug: 'other-sensors', label: 'All other sensors' },
            { slug: 'calculators/temperature-now', label: 'Temperature sensor now' },
            { slug: 'calculators/ice-and-boiling', label: 'Ice and boiling check' },
            { slug: 'calculators/cold-soak', label: 'Two after a night' },
            { slug: 'calculators/fit-a-curve', label: 'Fit a curve' },
            { slug: 'calculators/pressure-sensor', label: 'Pressure sensor' },
            { slug: 'calculators/coil', label: 'A coil' },
            { slug: 'calculators/two-states', label: 'Two states' },
            { slug: 'calculators/potentiometer-or-not', label: 'Potentiometer or not' },
            { slug: 'calculators/trouble-code', label: 'Trouble code' },
          ],
        },
        {
          label: 'At the bench',
          items: [
            { slug: 'how-to', label: 'All guides' },
            { slug: 'how-to/test-a-sensor' },
            { slug: 'how-to/record-a-sweep' },
            { slug: 'how-to/hook-up-a-microcontroller' },
            { slug: 'how-to/read-the-verdict' },
            { slug: 'how-to/use-the-command-line' },
            { slug: 'how-to/judge-by-a-queue' },
            { slug: 'how-to/work-without-a-connection' },
          ],
        },
        {
          label: 'Understand it',
          items: [
            { slug: 'concepts', label: 'All explanations' },
            { slug: 'concepts/loaded-divider' },
            { slug: 'concepts/what-an-instrument-shows' },
            { slug: 'concepts/evidence-and-verdict' },
          ],
        },
        {
          label: 'Lessons',
          items: [
            { slug: 'lessons', label: 'All lessons' },
            ...lessonPages.map(({ path }) => ({ slug: path })),
            { slug: 'lessons/sheet' },
          ],
        },
        {
          label: 'Formulas',
          items: [
            { slug: 'formulas', label: 'All formulas' },
            { slug: 'formulas/circuit', label: 'The bench circuit' },
            { slug: 'formulas/uncertainty', label: 'Windows and uncertainty' },
            { slug: 'formulas/instruments', label: 'Instruments and recordings' },
            { slug: 'formulas/vehicle', label: 'Vehicle and shape' },
            { slug: 'formulas/sensors', label: 'The other sensors' },
          ],
        },
        {
          label: 'For developers',
          items: [
            { slug: 'developers', label: 'Everything for developers' },
            { slug: 'developers/first-steps' },
            { slug: 'developers/many-recordings' },
            { slug: 'developers/scale' },
            { slug: 'developers/browser-and-worker' },
            { slug: 'developers/errors' },
            { slug: 'developers/stability' },
          ],
        },
        {
          label: 'Library reference',
          items: [
            { label: 'Packages and entries', link: '/reference/' },
            ...libraries.flatMap(({ name, entries }) =>
              entries.map(({ path }) => {
                const entry = path ? `${name}/${path}` : name;
                return { label: entry, link: `/reference/${entry}/` };
              }),
            ),
          ],
        },
        { slug: 'changelog' },
      ],
    }),
    preact(),
    securityPolicy(),
    // Last: what it keeps is what the others made.
    offline(),
  ],
});
