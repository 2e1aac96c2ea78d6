import { defineCollection } from 'astro:content';
import { docsSchema } from '@astrojs/starlight/schema';
import { glob } from 'astro/loaders';

export const collections = {
  docs: defineCollection({
    // The reference's own list of packages leads nowhere: the sidebar lists them.
    loader: glob({
      base: 'src/content/docs',
      pattern: ['**/[^_]*.{md,mdx}', '!reference/README.md'],
    }),
    schema: docsSchema(),
  }),
};
