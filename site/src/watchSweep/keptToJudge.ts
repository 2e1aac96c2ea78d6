import { keptFiles, type RecordedFiles } from './recordedFiles.js';
import { handOn } from './recordingStore.js';

/** A recording that was kept in the browser, as files to be judged; it is offered no more. Undefined where it is gone. */
export async function keptToJudge(id: string): Promise<RecordedFiles | undefined> {
  try {
    const files = await keptFiles(id);
    if (files) await handOn(id);
    return files;
  } catch {
    return undefined;
  }
}
