/** A slider with its name above it and its value, with the unit, beside that. */
export function Slider(props: {
  readonly id: string;
  readonly label: string;
  readonly shown: string;
  /** What a screen reader says: the value, and what it does where that is told. */
  readonly said: string;
  readonly most: number;
  readonly value: number;
  readonly onValue: (value: number) => void;
}) {
  const { id, label, shown, said, most, value, onValue } = props;
  return (
    <div class="played-slider">
      <label for={id}>{label}</label>
      <output for={id} aria-live="off">
        {shown}
      </output>
      <input
        id={id}
        type="range"
        min={0}
        max={most}
        step={1}
        value={value}
        aria-valuetext={said}
        autocomplete="off"
        onInput={(event) => onValue(event.currentTarget.valueAsNumber)}
      />
    </div>
  );
}
