import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';

/** The folder of a package in the project that has it installed from its tarball. */
export function unpackedFolder(name: string): string {
  return join(inject('scratch'), 'node_modules', name);
}

/** The files that a package's tarball holds, by their paths within it. */
export function unpackedFiles(name: string): readonly string[] {
  return readdirSync(unpackedFolder(name), { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    .map((file) => join(file.parentPath, file.name).slice(unpackedFolder(name).length + 1))
    .map((path) => path.replaceAll('\\', '/'));
}
