import type { Job } from '@truesweep/jobs';
import { usualRates } from '@truesweep/recordings';
import { checkSweepWords, watchWords } from '@truesweep/wording';
import type { ComponentType } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { groundsOf } from '../checkSweep/basis.js';
import { jobForm } from '../checkSweep/jobForm.js';
import type { ReadBy } from '../checkSweep/protocol.js';
import { WhichSensor } from '../checkSweep/WhichSensor.js';
import { inAddress } from '../forms/address.js';
import { EntryFields } from '../forms/EntryFields.js';
import { type Form, namesOf, readForm } from '../forms/form.js';
import { KeepEntries } from '../forms/KeepEntries.js';
import { useEntries } from '../forms/useEntries.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { KeepOnShelf } from '../shelf/KeepOnShelf.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import type { WatchSource } from './useWatched.js';
import { webSerial } from './webSerial.js';

/** The entries of a job without the times of the tests: these are marked while it is recorded. */
const watchForm: Form<(typeof jobForm)['entries']> = {
  ...jobForm,
  groups: jobForm.groups.filter(({ title }) => title !== checkSweepWords.testTimes),
};

type WatchPart = typeof import('./WatchPart.js')['WatchPart'];
type AskSound = typeof import('./AskSound.js')['AskSound'];

/** What runs, in code that is loaded when a source is chosen. */
interface Running {
  readonly Part: WatchPart;
  readonly source: WatchSource;
  readonly job: Job;
  readonly read: ReadBy;
}

/** The page: which sensor, where the samples come from, and then the recording that runs. Nothing is sent anywhere. */
export function WatchSweep() {
  const keeping = useMemo(() => inAddress(namesOf(watchForm)), []);
  const { texts, notice, link, setText, take, startAgain } = useEntries(jobForm, keeping);
  const [mine, setMine] = useState<string>();
  const [sensor, setSensor] = useState<ShelfSensor>();
  const [baud, setBaud] = useState<number>();
  const [said, setSaid] = useState<string>();
  const [lines, setLines] = useState<ReadBy>({});
  const [running, setRunning] = useState<Running>();
  const [Ask, setAsk] = useState<{ readonly Sound: AskSound }>();
  const [Offered, setOffered] = useState<ComponentType>();
  const [can, setCan] = useState({ serial: true, sound: true });

  useEffect(() => {
    setCan({
      serial: webSerial() !== undefined,
      sound: 'mediaDevices' in navigator && 'AudioWorkletNode' in window,
    });
  }, []);
  const isRunning = running !== undefined;
  useEffect(() => {
    if (isRunning || !('locks' in navigator)) return setOffered(undefined);
    void import('./Offered.js').then((loaded) => setOffered(() => loaded.Offered));
  }, [isRunning]);

  const standing = JSON.stringify(texts);
  const isMine = mine === standing;
  const grounds = groundsOf('recordings', undefined, texts, isMine);
  const job = grounds.kind === 'ready' ? grounds.given.job : undefined;
  const form = readForm(watchForm, texts);
  const refusals = 'refusals' in form ? form.refusals : {};

  const run = async (source: WatchSource, by: Job, read: ReadBy): Promise<void> => {
    const { WatchPart: Part } = await import('./WatchPart.js');
    setSaid(undefined);
    setRunning({ Part, source, job: by, read });
  };
  const runSerial = async (): Promise<void> => {
    const serial = webSerial();
    if (!serial || !job) return;
    try {
      const port = await serial.requestPort();
      const source = { kind: 'serial', serial, port, ...(baud !== undefined && { baud }) } as const;
      await run(source, job, lines);
    } catch {
      // Whoever closes the browser's list of ports chooses none.
      setSaid(watchWords.portRefused);
    }
  };
  if (running) {
    const { Part, ...of } = running;
    return (
      <div class="readings not-content">
        <Part
          {...of}
          sensor={sensor}
          texts={texts}
          onRead={setLines}
          onOver={() => {
            setRunning(undefined);
            setAsk(undefined);
          }}
        />
      </div>
    );
  }
  return (
    <div class="readings not-content">
      <NewerVersion />
      {notice !== undefined && <p class="notice">{notice}</p>}
      {Offered && <Offered />}
      <WhichSensor
        texts={texts}
        isMine={isMine}
        isWrong={grounds.kind === 'refused'}
        sensor={sensor}
        mine={watchWords.sensor}
        onSensor={(chosen) => {
          setSensor(chosen);
          setMine(chosen && JSON.stringify(take(chosen.texts)));
        }}
        onMine={() => setMine(standing)}
      />
      <section class="which-sensor" aria-labelledby="which-source">
        <h2 id="which-source">{watchWords.source}</h2>
        {Ask && job ? (
          <Ask.Sound
            onBegin={(sound) => run({ kind: 'sound' }, soundJob(job, sound), { sound })}
            onBack={() => setAsk(undefined)}
          />
        ) : (
          <>
            <p class="hint" role="status">
              {said ?? (grounds.kind === 'refused' ? grounds.why : job ? '' : watchWords.sayFirst)}
            </p>
            <div class="sources">
              <button
                type="button"
                class="main"
                disabled={!job || !can.serial}
                aria-describedby="serial-hint"
                onClick={runSerial}
              >
                {watchWords.serial}
              </button>
              <p class="hint" id="serial-hint">
                {can.serial ? watchWords.serialHint : watchWords.noSerial}
              </p>
              <button
                type="button"
                class="main"
                disabled={!job || !can.sound}
                aria-describedby="sound-hint"
                onClick={async () => {
                  const { AskSound: Sound } = await import('./AskSound.js');
                  setAsk({ Sound });
                }}
              >
                {watchWords.sound}
              </button>
              <p class="hint" id="sound-hint">
                {can.sound ? watchWords.soundHint : watchWords.noSound}
              </p>
            </div>
            <div class="entry text">
              <label for="baud">{watchWords.rate}</label>
              <select
                id="baud"
                onChange={({ currentTarget: { value } }) =>
                  setBaud(value === '' ? undefined : Number(value))
                }
              >
                <option value="">{watchWords.rateFound}</option>
                {usualRates
                  .toSorted((one, other) => one - other)
                  .map((rate) => (
                    <option key={rate} value={rate} selected={rate === baud}>
                      {rate} baud
                    </option>
                  ))}
              </select>
            </div>
          </>
        )}
      </section>
      <details class="job-entries">
        <summary>{watchWords.entries}</summary>
        <EntryFields
          form={watchForm}
          texts={texts}
          refusals={refusals}
          onText={(name, text) => {
            setText(name, text);
            if (isMine) setMine(JSON.stringify({ ...texts, [name]: text }));
          }}
        />
        <KeepOnShelf
          texts={texts}
          onKept={(kept) => {
            setSensor(kept);
            setMine(standing);
          }}
        />
        <KeepEntries
          link={link}
          onAgain={() => {
            setMine(undefined);
            setSensor(undefined);
            startAgain();
          }}
        />
      </details>
    </div>
  );
}

/** A job with what a sound input is: coupled through a capacitor, if nobody said otherwise, and of the range that its full scale says. */
function soundJob(job: Job, sound: NonNullable<ReadBy['sound']>): Job {
  const volts = sound.fullScale * sound.attenuation;
  const range = { low: -volts, high: volts };
  return { ...job, instrument: { coupling: 'ac', range, ...job.instrument } };
}
