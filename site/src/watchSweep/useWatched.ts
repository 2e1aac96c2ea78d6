import type { DeliberateTest } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import { portTroubleSentence, watchWords } from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Look, ReadBy } from '../checkSweep/protocol.js';
import { holdRecordings } from '../offline/held.js';
import { listenToSound, type SoundInput } from './listenToSound.js';
import { type ReadPort, readSerialPort } from './readSerialPort.js';
import type { KeepTrouble } from './recordingStore.js';
import { traceModel } from './traceModel.js';
import type {
  JudgedSoFar,
  Standing,
  WatchedRecent,
  WatchPlan,
  WatchTold,
} from './watchProtocol.js';
import { type WatchWorker, watchWorker } from './watchWorker.js';
import type { WebSerial, WebSerialPort } from './webSerial.js';

/** Where samples come from. */
export type WatchSource =
  | {
      readonly kind: 'serial';
      readonly serial: WebSerial;
      readonly port: WebSerialPort;
      /** Baud; found out when left out. */
      readonly baud?: number;
    }
  | { readonly kind: 'sound' };

/** Who is told of each reading and of each finding. */
interface Hearer {
  readonly onVolts: (volts: number) => void;
  readonly onFinding: () => void;
}

/** How far a recording is. */
export type Stage =
  | { readonly kind: 'trying' | 'running'; readonly baud: number }
  | { readonly kind: 'opening' | 'lost' | 'ending' }
  | { readonly kind: 'ended'; readonly told: Extract<WatchTold, { kind: 'ended' }> }
  | { readonly kind: 'failed'; readonly why: string };

type ToldOf<Kind extends WatchTold['kind']> = Extract<WatchTold, { kind: Kind }>;

/** What of the running recording stands in words: changed so often that it can be read, ms. */
const wordsEvery = 250;

/** Records from a source and has it watched, from when it is called until it is stopped or its part of the page goes. */
export function useWatched(source: WatchSource, job: Job, read: ReadBy) {
  const model = useMemo(() => traceModel(), []);
  const [stage, setStage] = useState<Stage>({ kind: 'opening' });
  const [standing, setStanding] = useState<Standing>();
  const [judged, setJudged] = useState<JudgedSoFar>();
  const [recent, setRecent] = useState<WatchedRecent>();
  const [test, setTest] = useState<DeliberateTest>();
  const [looked, setLooked] = useState<{ readonly look: Look; readonly read: ReadBy }>();
  const [trouble, setTrouble] = useState<KeepTrouble>();
  const hearer = useRef<Hearer>();
  const running = useRef<{ worker: WatchWorker; end: () => Promise<void> }>();

  useEffect(() => {
    let input: SoundInput | undefined;
    let port: ReadPort | undefined;
    let latest: WatchedRecent | undefined;
    let isOver = false;
    const words = setInterval(() => latest && setRecent(latest), wordsEvery);

    const hear: { readonly [Kind in WatchTold['kind']]: (told: ToldOf<Kind>) => void } = {
      tried: ({ isRight }) => port?.judgeRate(isRight),
      levels: (levels) => model.begin(levels),
      columns: (columns) => {
        model.add(columns, columns.latest);
        hearer.current?.onVolts(columns.volts);
      },
      recent: ({ recent: told }) => {
        model.tell(told.findings, told.found, told.hints, told.latest);
        if (told.found > (latest?.found ?? 0)) hearer.current?.onFinding();
        latest = told;
      },
      standing: (told) => setStanding(told.standing),
      'so-far': (told) => setJudged(told.judged),
      marked: (told) => setTest(told.test),
      looked: (told) => setLooked(told),
      'not-kept': (told) => setTrouble(told.trouble),
      refused: ({ refusal }) => fail(refusal),
      ended: (told) => {
        setStage({ kind: 'ended', told });
        worker?.end();
      },
    };
    const onTold = <Kind extends WatchTold['kind']>(told: ToldOf<Kind>): void =>
      hear[told.kind as Kind](told);
    const fail = (why: string): void => {
      setStage({ kind: 'failed', why });
      void end().then(() => worker?.end());
    };
    const end = async (): Promise<void> => {
      clearInterval(words);
      await Promise.all([input?.end(), port?.end()]);
    };
    let worker: WatchWorker | undefined;
    try {
      worker = watchWorker(onTold, () => fail(watchWords.broken));
    } catch {
      setStage({ kind: 'failed', why: watchWords.noWorker });
      return;
    }
    const { ask } = worker;
    const begin = (): void => {
      const plan: WatchPlan = {
        id: crypto.randomUUID(),
        job,
        read,
        startedAt: new Date().toISOString(),
      };
      ask({ kind: 'begin', plan });
    };
    running.current = { worker, end };
    holdRecordings(true);

    if (source.kind === 'serial')
      port = readSerialPort(source.serial, source.port, source.baud, {
        onTry: (baud) => {
          ask({ kind: 'try' });
          setStage({ kind: 'trying', baud });
        },
        onRate: (baud) => {
          begin();
          setStage({ kind: 'running', baud });
        },
        onBytes: (bytes, arrived) => ask({ kind: 'bytes', bytes, arrived }),
        onGap: () => ask({ kind: 'lost' }),
        onPresent: (isPresent) =>
          setStage((before) => {
            if (!isPresent && before.kind === 'running') lastRate = before.baud;
            return isPresent ? { kind: 'running', baud: lastRate } : { kind: 'lost' };
          }),
        onFailed: (why) =>
          fail(
            why.kind === 'no-rate' ? watchWords.nothingReadable : portTroubleSentence(why.reason),
          ),
      });
    else
      listenToSound(() => stop()).then(
        (opened) => {
          input = opened;
          if (isOver) return void opened.end();
          begin();
          ask({ kind: 'sound', samples: opened.samples, rate: opened.rate });
          setStage({ kind: 'running', baud: opened.rate });
        },
        () => fail(watchWords.soundRefused),
      );
    let lastRate = 0;
    return () => {
      isOver = true;
      holdRecordings(false);
      void end().then(() => worker?.end());
    };
  }, []);

  const stop = (): void => {
    setStage({ kind: 'ending' });
    const { worker, end } = running.current ?? {};
    void end?.().then(() => worker?.ask({ kind: 'end' }));
  };
  return {
    model,
    stage,
    standing,
    judged,
    recent,
    test,
    looked,
    trouble,
    hearer,
    stop,
    mark: (kind: DeliberateTest) => running.current?.worker.ask({ kind: 'mark', test: kind }),
    readBy: (by: ReadBy) => running.current?.worker.ask({ kind: 'read', read: by }),
  };
}
