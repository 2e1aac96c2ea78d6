import type { UnitThatFits } from '@truesweep/core';
import { takeUnitWords } from '@truesweep/wording';
import type { GivenJob } from './protocol.js';

type Text = NonNullable<GivenJob['text']>;

/** Takes a column for one in a unit that fits, with one tap. */
export function TakeUnits(props: {
  readonly units: readonly UnitThatFits[];
  readonly onText: (text: Text) => void;
}) {
  if (props.units.length === 0) return null;
  return (
    <p class="keep">
      {props.units.map((unit) => (
        <button
          type="button"
          key={unit.unit + unit.bits}
          onClick={() => props.onText(textOf(unit))}
        >
          {takeUnitWords(unit)}
        </button>
      ))}
    </p>
  );
}

/** How a column is read in a unit. */
function textOf({ unit, voltsPerUnit }: UnitThatFits): Text {
  if (unit === 'ms' || unit === 'µs') return { timeUnit: unit };
  if (unit === 'mV' || voltsPerUnit === undefined) return { signalUnit: unit };
  return { signalUnit: unit, voltsPerUnit };
}
