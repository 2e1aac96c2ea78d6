import type { Chosen } from './basis.js';

/** So much of a file tells whether it is a page, bytes. */
const headBytes = 100;

/** What kind of files were chosen; a page is told by how it begins, whatever it is called. */
export async function chosenFiles(files: readonly File[]): Promise<Chosen> {
  const heads = await Promise.all(files.map(headOf));
  if (heads.some((head) => /^\s*<!doctype html/i.test(head))) return { files, kind: 'report' };
  return { files, kind: files.some(isJobFile) ? 'job' : 'recordings' };
}

/** Whether a file is a job, by its name. */
export function isJobFile({ name }: { readonly name: string }): boolean {
  return /\.json$/i.test(name);
}

/** The begin of a file; nothing of one that can't be read, which its judging then says. */
async function headOf(file: File): Promise<string> {
  return await file
    .slice(0, headBytes)
    .text()
    .catch(() => '');
}
