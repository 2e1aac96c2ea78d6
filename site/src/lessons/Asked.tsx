import type { AnswerChecked, ExercisePart } from '@truesweep/explain';

/** One question of an exercise with its field or its choices, and what is said of the answer. */
export function Asked(props: {
  readonly part: ExercisePart;
  readonly answer: string;
  readonly checked: AnswerChecked | undefined;
  readonly onAnswer: (answer: string) => void;
}) {
  const { part, answer, checked, onAnswer } = props;
  const id = `asked-${part.id}`;
  const said = `${id}-said`;
  const isOff = checked !== undefined && checked.result !== 'right';
  return (
    <div class="asked">
      {part.kind === 'quantity' ? (
        <>
          <label for={id}>{part.asks}</label>
          <input
            id={id}
            type="text"
            autocomplete="off"
            value={answer}
            aria-describedby={said}
            aria-invalid={isOff}
            onInput={(event) => onAnswer(event.currentTarget.value)}
          />
        </>
      ) : (
        <fieldset aria-describedby={said}>
          <legend>{part.asks}</legend>
          {part.options.map((option) => (
            <label key={option.id}>
              <input
                type="radio"
                name={id}
                checked={answer === option.id}
                onInput={() => onAnswer(option.id)}
              />
              {option.text}
            </label>
          ))}
        </fieldset>
      )}
      <p id={said} class={`asked-said ${checked?.result ?? ''}`} aria-live="polite">
        {checked?.sentence}
      </p>
    </div>
  );
}
