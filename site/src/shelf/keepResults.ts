import type { Judged } from '../checkSweep/protocol.js';
import { type ShelfSensor, withResult } from './shelf.js';

/** Keeps what recordings came to with their sensor on the shelf; false where that could not be. */
export async function keepResults(sensor: ShelfSensor, judged: Judged): Promise<boolean> {
  const { changeSensor } = await import('./shelfStore.js');
  const at = new Date().toISOString();
  const tried = await changeSensor(sensor.id, (before) =>
    judged.recordings.reduce(
      (kept, { name, sha256, verdict, said, score }) =>
        withResult(kept, {
          at,
          recording: name,
          sha256,
          verdict,
          said,
          restsOn: judged.restsOn,
          score,
        }),
      before ?? sensor,
    ),
  );
  return 'value' in tried;
}
