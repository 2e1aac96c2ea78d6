import { defineCollection } from 'astro:content';
import { docsLoader } from '@astrojs/starlight/loaders';
import { docsSchema } from '@astrojs/starlight/schema';
import { z } from 'astro/zod';

export const collections = {
  docs: defineCollection({
    loader: docsLoader(),
    schema: docsSchema({
      // Words of the trade that the page answers and doesn't contain: the search finds it by them.
      extend: z.object({ searchedAs: z.array(z.string()).default([]) }),
    }),
  }),
};
