import {
  type AnswerChecked,
  checkAnswer,
  type ExercisePart,
  makeExercise,
  workingHtml,
} from '@truesweep/explain';
import { exerciseSetWords as words } from '@truesweep/wording/working';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Asked } from './Asked.js';
import { answerText } from './answerText.js';
import { DrawnSweepPicture } from './DrawnSweepPicture.js';
import type { Drawn } from './exerciseSets.js';
import type { Done } from './progressStore.js';

/** An exercise, and who is told how it was done. */
export interface ExerciseProps extends Drawn {
  readonly seed: number;
  readonly heading: string;
  /** How much room a drawing has, px. */
  readonly width: number;
  readonly onDone: (how: Done) => void;
}

/** One exercise: what is given and asked, what is said of the answers, a hint and the worked answer. */
export function Exercise({ topic, level, seed, heading, width, onDone }: ExerciseProps) {
  const exercise = useMemo(() => makeExercise(topic, level, seed), [topic, level, seed]);
  const { question, hint, parts, working } = exercise;
  const [answers, setAnswers] = useState<Readonly<Record<string, string>>>({});
  const [checked, setChecked] = useState<Readonly<Record<string, AnswerChecked>>>({});
  const [isHinted, setHinted] = useState(false);
  const [isShown, setShown] = useState(false);
  const title = useRef<HTMLHeadingElement>(null);
  // What was pressed is gone: whoever has no eyes on the page is led on.
  useEffect(() => title.current?.focus(), []);
  const isRight = parts.every(({ id }) => checked[id]?.result === 'right');
  const check = () =>
    setChecked(Object.fromEntries(parts.map((part) => [part.id, sayOf(part, answers[part.id])])));
  const sayOf = (part: ExercisePart, answer = ''): AnswerChecked => {
    if (answer.trim() !== '') return checkAnswer(exercise, answer, part.id);
    const sentence =
      part.kind === 'quantity' ? words.empty(words.examples[part.unit]) : words.unchosen;
    return { result: 'unreadable', sentence };
  };
  return (
    <div class="exercise">
      <h3 tabIndex={-1} ref={title}>
        {heading}
      </h3>
      <p class="exercise-question">{question}</p>
      {exercise.sweep && (
        <DrawnSweepPicture id={`exercise-${seed}`} sweep={exercise.sweep} width={width} />
      )}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          check();
        }}
      >
        {parts.map((part) => (
          <Asked
            key={part.id}
            part={part}
            answer={answers[part.id] ?? ''}
            checked={checked[part.id]}
            onAnswer={(answer) => {
              setAnswers({ ...answers, [part.id]: answer });
              const { [part.id]: _, ...others } = checked;
              setChecked(others);
            }}
          />
        ))}
        <div class="exercise-buttons">
          <button type="submit">{words.check}</button>
          <button type="button" onClick={() => setHinted(true)}>
            {words.hint}
          </button>
          <button type="button" onClick={() => setShown(true)}>
            {words.showAnswer}
          </button>
          {(isRight || isShown) && (
            <button type="button" class="main" onClick={() => onDone(isShown ? 'shown' : 'right')}>
              {words.next}
            </button>
          )}
        </div>
      </form>
      <div aria-live="polite">
        {isHinted && <p class="exercise-hint">{hint}</p>}
        {isShown && (
          <div class="workings working">
            <h4>{words.workedAnswer}</h4>
            <ul>
              {parts.map((part) => (
                <li key={part.id}>
                  {part.asks} <strong>{answerText(part)}</strong>
                </li>
              ))}
            </ul>
            {/* Written by the package of workings, which escapes every text. */}
            <div dangerouslySetInnerHTML={{ __html: workingHtml(working) }} />
          </div>
        )}
      </div>
    </div>
  );
}
