/** Boxes to tick. */
export function Ticks<Code extends string>(props: {
  readonly legend: string;
  readonly labels: Readonly<Record<Code, string>>;
  readonly done: readonly string[];
  readonly onTick: (code: Code, isDone: boolean) => void;
}) {
  const { legend, labels, done, onTick } = props;
  return (
    <fieldset class="ticks">
      <legend>{legend}</legend>
      {(Object.entries(labels) as [Code, string][]).map(([code, label]) => (
        <label key={code}>
          <input
            type="checkbox"
            name={code}
            checked={done.includes(code)}
            onChange={(event) => onTick(code, event.currentTarget.checked)}
          />{' '}
          {label}
        </label>
      ))}
    </fieldset>
  );
}
