import type { NamedFile } from '@truesweep/jobs';
import { checkFiles } from './checkFiles.js';

/** Judges away from the page, so that a long recording doesn't hold it up. */
self.onmessage = async ({ data }: MessageEvent<readonly NamedFile[]>) => {
  self.postMessage(await checkFiles(data, new Date().toISOString()));
};
