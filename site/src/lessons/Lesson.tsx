import { lessonWords } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useReachable } from '../forms/useReachable.js';
import { firstPlaces, type LessonFigure, type LessonSteps, type Places } from './lesson.js';
import { Slider } from './Slider.js';
import { Steps } from './Steps.js';

/** A hand that rests so long, ms, has found its place. */
const rests = 120;

/**
 * A lesson's figure below its sliders, and the steps that follow them. The steps for the first places came with the page, as children; the
 * code that writes others is fetched once a slider is moved.
 */
export function Lesson(props: {
  readonly figure: LessonFigure;
  readonly children?: ComponentChildren;
}) {
  const { figure, children } = props;
  const { id, sliders } = figure;
  const [places, setPlaces] = useState<Places>(() => firstPlaces(sliders));
  const [isMoved, setMoved] = useState(false);
  const { values, drawing, says } = useMemo(() => figure.shown(places), [figure, places]);
  const steps = useSteps(figure, places, isMoved);
  const place = useRef<HTMLElement>(null);
  useReachable(place);
  const move = (at: number, to: number) => {
    setPlaces(places.map((place, i) => (i === at ? to : place)));
    setMoved(true);
  };
  return (
    <section class="played lesson not-content" aria-label={lessonWords.figure} ref={place}>
      <div class="played-entries">
        {sliders.map(({ name, label, most }, i) => (
          <Slider
            key={name}
            id={`${id}-${name}`}
            label={label}
            shown={values[i] ?? ''}
            said={values[i] ?? ''}
            most={most}
            value={places[i] ?? 0}
            onValue={(to) => move(i, to)}
          />
        ))}
      </div>
      <div class="played-drawings">{drawing}</div>
      <div class="played-answer">
        {says.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <h2>{lessonWords.steps}</h2>
      <div aria-busy={steps === 'coming'}>
        {steps === 'none' && <p role="alert">{lessonWords.notFetched}</p>}
        {typeof steps === 'object' && <Steps {...steps} />}
        {(steps === 'as-it-came' || steps === 'coming') && children}
      </div>
    </section>
  );
}

/** The steps for some places, once the sliders were moved; the last ones until others are written. */
function useSteps({ steps }: LessonFigure, places: Places, isMoved: boolean) {
  const [written, setWritten] = useState<LessonSteps | 'as-it-came' | 'coming' | 'none'>(
    'as-it-came',
  );
  useEffect(() => {
    if (!isMoved) return;
    let isWanted = true;
    const show = (shown: typeof written) => {
      if (isWanted)
        setWritten((before) => (shown === 'coming' && before !== 'as-it-came' ? before : shown));
    };
    show('coming');
    // Fetched at once, written when the hand rests.
    const code = steps();
    const waits = setTimeout(() => {
      code.then(({ stepsOf }) => show(stepsOf(places))).catch(() => show('none'));
    }, rests);
    code.catch(() => {});
    return () => {
      isWanted = false;
      clearTimeout(waits);
    };
  }, [steps, places, isMoved]);
  return written;
}
