import { checkPageWords } from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Chosen, Grounds } from './basis.js';
import type { Progress } from './protocol.js';
import { type Outcome, type SweepWorker, sweepWorker } from './sweepWorker.js';

/** While someone writes, judging waits for a rest of the hand, ms; the verdict before is gone at once. */
const settleAfter = 400;

/** What a verdict was made from; another object where any of it is another. */
interface Basis {
  readonly chosen: Chosen;
  readonly grounds: Extract<Grounds, { kind: 'ready' }>;
}

/** An outcome with what it rests on, and the worker that holds the recordings. */
interface Found {
  readonly basis: Basis;
  readonly outcome: Outcome;
  readonly worker?: SweepWorker | undefined;
}

/**
 * Judges chosen files, anew whenever what the verdict rests on changes. What was found is handed out only while its basis is the
 * one that stands on the page.
 *
 * @param onFound Told of each outcome, with the files that it is of.
 */
export function useJudged(
  chosen: Chosen | undefined,
  grounds: Grounds,
  onFound: (outcome: Outcome, chosen: Chosen, key: string) => void,
) {
  const key = grounds.kind === 'ready' ? grounds.key : undefined;
  const basis = useMemo(
    () => (chosen && grounds.kind === 'ready' ? { chosen, grounds } : undefined),
    [chosen, key],
  );
  const [found, setFound] = useState<Found>();
  const [progress, setProgress] = useState<Progress>();
  const [attempt, setAttempt] = useState(0);
  const running = useRef<() => void>(() => {});
  const last = useRef<Chosen>();

  useEffect(() => {
    if (!basis) return;
    let worker: SweepWorker | undefined;
    let isOver = false;
    const end = () => {
      isOver = true;
      worker?.end();
    };
    const tell = (outcome: Outcome) => {
      if (isOver) return;
      setFound({ basis, outcome, worker });
      onFound(outcome, basis.chosen, basis.grounds.key);
    };
    const wait = last.current === basis.chosen ? settleAfter : 0;
    last.current = basis.chosen;
    setProgress(undefined);
    const timer = setTimeout(() => {
      try {
        worker = sweepWorker(tell, setProgress);
      } catch {
        return tell({ kind: 'broken', why: checkPageWords.noWorker });
      }
      worker.judge(basis.chosen, basis.grounds.given);
    }, wait);
    running.current = () => {
      tell({ kind: 'broken', why: checkPageWords.stopped });
      clearTimeout(timer);
      end();
    };
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [basis, attempt]);

  const current = basis && found?.basis === basis ? found : undefined;
  return {
    outcome: current?.outcome,
    worker: current?.worker,
    isBusy: basis !== undefined && !current,
    progress,
    stop: () => running.current(),
    again: () => {
      setFound(undefined);
      setAttempt((before) => before + 1);
    },
  };
}
