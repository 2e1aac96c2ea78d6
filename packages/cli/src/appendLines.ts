import { fsync, ftruncateSync } from 'node:fs';
import { writeWhole } from './writeWhole.js';

/** So much may be lost where the machine itself stops: what came in this time, ms. */
const toDiskEvery = 1000;

/**
 * What adds whole lines to an open file behind so many bytes. They are the system's at once, so that this program may end at any moment, and on the
 * disk soon; where they can't be written no part of them stays.
 */
export function appendLines(file: number): (bytes: Uint8Array, size: number) => void {
  let isBusy = false;
  let synced = performance.now();
  const toDisk = (): void => {
    if (isBusy || performance.now() - synced < toDiskEvery) return;
    isBusy = true;
    fsync(file, () => {
      isBusy = false;
      synced = performance.now();
    });
  };
  return (bytes, size) => {
    try {
      writeWhole(file, bytes);
    } catch (error) {
      ftruncateSync(file, size);
      throw error;
    }
    toDisk();
  };
}
