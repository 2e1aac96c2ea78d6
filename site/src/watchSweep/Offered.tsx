import { offeredSentence } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { localTime } from '../checkSweep/localTime.js';
import { keepFile } from '../forms/keepFile.js';
import { KeptActions } from './KeptActions.js';
import { handOn, type KeptRecording, offeredRecordings } from './recordingStore.js';

/** Offers recordings that broke off, or that nothing became of. */
export function Offered() {
  const [offered, setOffered] = useState<readonly KeptRecording[]>([]);
  const read = async (): Promise<void> => setOffered(await offeredRecordings().catch(() => []));
  useEffect(() => {
    void read();
  }, []);
  return (
    <>
      {offered.map(({ id, startedAt, isWhole }) => (
        <section key={id} class="notice offered">
          <p>{offeredSentence(dayOrTime(startedAt), isWhole)}</p>
          <KeptActions
            id={id}
            throwsAway={id}
            onThrown={read}
            onSave={async () => {
              const { keptFiles } = await import('./recordedFiles.js');
              for (const file of (await keptFiles(id)) ?? []) keepFile(file);
              await handOn(id);
              await read();
            }}
          />
        </section>
      ))}
    </>
  );
}

/** When something was: of today the time alone. */
function dayOrTime(at: string): string {
  const [day, time] = localTime(new Date(at)).split(' ') as [string, string];
  return localTime(new Date()).startsWith(day) ? time : `${day} ${time}`;
}
