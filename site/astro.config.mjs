import { fileURLToPath } from 'node:url';
import preact from '@astrojs/preact';
import starlight from '@astrojs/starlight';
import { reportStyle } from '@truesweep/report';
import { defineConfig } from 'astro/config';
import starlightTypeDoc, { typeDocSidebarGroup } from 'starlight-typedoc';

import { offline } from './integrations/offline.mjs';
import { securityPolicy } from './integrations/securityPolicy.mjs';

const fromRoot = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const packages = ['core', 'recordings', 'jobs', 'wording', 'drawings', 'report'];

export default defineConfig({
  // The folder of the address below which the site is served.
  base: process.env.TRUESWEEP_BASE ?? '/truesweep',
  trailingSlash: 'always',
  integrations: [
    starlight({
      title: 'truesweep',
      description: 'Bench testing of engine-management position sensors.',
      customCss: ['./src/styles/paper.css'],
      plugins: [
        starlightTypeDoc({
          entryPoints: packages.map((name) => fromRoot(`packages/${name}`)),
          tsconfig: fromRoot('tsconfig.json'),
          output: 'reference',
          sidebar: { label: 'Library reference', collapsed: true },
          errorOnEmptyDocumentation: true,
          typeDoc: {
            entryPointStrategy: 'packages',
            packageOptions: { entryPoints: ['src/index.ts'], disableSources: true },
            // The type check is a step of its own, before this one.
            skipErrorChecking: true,
            disableSources: true,
          },
        }),
      ],
      sidebar: [
        { label: 'The job', link: '/' },
        {
          label: 'Calculators',
          items: [
            { slug: 'calculators/find-the-terminals', label: 'Find the terminals' },
            { slug: 'calculators/plan-the-hook-up', label: 'Plan the hook-up' },
            { slug: 'calculators/expected-readings', label: 'Expected readings' },
            { slug: 'calculators/which-instrument', label: 'Which instrument' },
            { slug: 'calculators/make-dirt-visible', label: 'Make dirt visible' },
            { slug: 'calculators/check-a-sweep', label: 'Check a sweep' },
            { slug: 'calculators/set-the-closed-position', label: 'Set the closed position' },
            { slug: 'calculators/supply-and-ground-drop', label: 'Supply and ground drop' },
            { slug: 'calculators/bench-to-vehicle', label: 'Bench to vehicle' },
          ],
        },
        { slug: 'cautions' },
        typeDocSidebarGroup,
      ],
    }),
    preact(),
    securityPolicy([reportStyle]),
    // Last: what it keeps is what the others made.
    offline(),
  ],
});
