import { opendir, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';

/** Files of a folder that are taken for recordings; others are named one by one. */
const endings = ['.csv', '.tsv', '.txt', '.dat', '.log', '.asc', '.wav'];

/** The files that a path stands for: of a folder all that are named like recordings, but for what is hidden, as they are found; else the path itself. */
export async function* recordingsBelow(path: string): AsyncGenerator<string> {
  const there = await stat(path).catch(() => undefined);
  if (!there?.isDirectory()) {
    yield path;
    return;
  }
  const folders = [path];
  for (let folder = folders.pop(); folder !== undefined; folder = folders.pop()) {
    for await (const entry of await opendir(folder)) {
      if (entry.name.startsWith('.')) continue;
      const inside = join(folder, entry.name);
      if (entry.isDirectory()) folders.push(inside);
      else if (endings.includes(extname(entry.name).toLowerCase())) yield inside;
    }
  }
}
