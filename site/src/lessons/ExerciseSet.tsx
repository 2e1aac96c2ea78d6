import { exerciseSetWords as words } from '@truesweep/wording/working';
import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useReachable } from '../forms/useReachable.js';
import type { ExerciseProps } from './Exercise.js';
import { type ExerciseSetName, exerciseSets, seedOf } from './exerciseSets.js';
import {
  type Done,
  keepProgress,
  noProgress,
  type Progress,
  readProgress,
} from './progressStore.js';

/** The exercises of a lesson, one at a time. What makes and checks them is fetched when they are begun; how far one is, the browser keeps. */
export function ExerciseSet({ set }: { readonly set: ExerciseSetName }) {
  const drawn = exerciseSets[set];
  const count = drawn.length;
  const [progress, setProgress] = useState<Progress>(noProgress);
  const [isKept, setKept] = useState(true);
  const [Exercise, setExercise] = useState<ComponentType<ExerciseProps>>();
  const [fetched, setFetched] = useState<'not' | 'coming' | 'failed'>('not');
  const place = useRef<HTMLElement>(null);
  useReachable(place);
  useEffect(() => setProgress(readProgress(set, count)), [set, count]);
  const change = (changed: Progress) => {
    setProgress(changed);
    setKept(keepProgress(set, changed));
  };
  const begin = () => {
    setFetched('coming');
    import('./Exercise.js')
      .then((code) => setExercise(() => code.Exercise))
      .catch(() => setFetched('failed'));
  };
  const at = progress.done.length;
  const next = drawn[at];
  const done = (how: Done) => change({ ...progress, done: [...progress.done, how] });
  return (
    <section class="exercises not-content" aria-labelledby={`${set}-exercises`} ref={place}>
      <h2 id={`${set}-exercises`}>{words.title}</h2>
      <p class="exercises-progress" role="status">
        {next
          ? words.progress(String(at), String(count))
          : words.finished(
              String(progress.done.filter((how) => how === 'right').length),
              String(count),
            )}
      </p>
      {!isKept && <p class="exercises-notice">{words.notKept}</p>}
      {fetched === 'failed' && <p role="alert">{words.notFetched}</p>}
      {next && !Exercise && (
        <button type="button" disabled={fetched === 'coming'} onClick={begin}>
          {fetched === 'coming' ? words.fetching : at > 0 ? words.goOn : words.begin}
        </button>
      )}
      {next && Exercise && (
        <Exercise
          key={`${progress.round}-${at}`}
          {...next}
          seed={seedOf(progress.round, at)}
          heading={words.numbered(String(at + 1), String(count))}
          width={place.current?.clientWidth ?? 0}
          onDone={done}
        />
      )}
      {at > 0 && (
        <button
          type="button"
          class="quiet"
          onClick={() => change({ round: progress.round + 1, done: [] })}
        >
          {words.again}
        </button>
      )}
    </section>
  );
}
