import type { TestProject } from 'vitest/node';
import { scratchProject } from './tarballs.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** The project that has the packages installed from their tarballs. */
    scratch: string;
    /** The tarball of each package. */
    tarballs: Readonly<Record<string, string>>;
  }
}

/** Packs the packages once for all tests of what is published. */
export default async function setup(project: TestProject) {
  const { folder, tarballs, remove } = await scratchProject();
  project.provide('scratch', folder);
  project.provide('tarballs', Object.fromEntries(tarballs));
  return remove;
}
