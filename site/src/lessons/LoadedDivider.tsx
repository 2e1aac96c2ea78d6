/// <reference types="astro/client" />
import { formatQuantity } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { dividerSentences, dividerWords, readingsWords } from '@truesweep/wording';
import { useMemo, useState } from 'preact/hooks';
import { type DividerEntries, firstEntries, loadedDivider, loads } from './loadedDivider.js';

const formulas = `${import.meta.env.BASE_URL.replace(/\/$/, '')}/formulas/circuit/#`;
const limiters = [1000, 0];

/** A potentiometer to be loaded: circuit, bent line beside the straight one, and the numbers put into the formulas. */
export function LoadedDivider() {
  const [entries, setEntries] = useState(firstEntries);
  const divider = useMemo(() => loadedDivider(entries), [entries]);
  const { circuit, closed, open, loaded, unloaded, reading, facts } = divider;
  const said = dividerSentences(facts);
  const set = (changed: Partial<DividerEntries>) => setEntries({ ...entries, ...changed });
  return (
    <section class="divider not-content" aria-label={dividerWords.title}>
      <div class="divider-entries">
        <Slider
          name="load"
          label={dividerWords.load}
          shown={facts.load}
          said={dividerWords.off(facts.load, facts.off)}
          most={loads.length - 1}
          value={loads.indexOf(entries.load)}
          onValue={(at) => set({ load: loads[at] ?? entries.load })}
        />
        <Slider
          name="position"
          label={dividerWords.position}
          shown={facts.position}
          said={dividerWords.off(facts.position, facts.off)}
          most={100}
          value={Math.round(entries.position * 100)}
          onValue={(percent) => set({ position: percent / 100 })}
        />
        <fieldset>
          <legend>{dividerWords.limiter}</legend>
          {limiters.map((ohms) => (
            <label key={ohms}>
              <input
                type="radio"
                name="limiter"
                checked={entries.limiter === ohms}
                onInput={() => set({ limiter: ohms })}
              />
              {ohms > 0 ? formatQuantity(ohms, 'Ω', { trim: true }) : dividerWords.noLimiter}
            </label>
          ))}
        </fieldset>
      </div>
      {entries.limiter === 0 && <p class="divider-caution">{readingsWords.noLimiter}</p>}
      <div class="divider-drawings">
        <CurveDrawing
          id="divider-curve"
          curve={loaded}
          compared={unloaded}
          markers={[{ travel: entries.position, volts: reading, label: facts.loaded }]}
        />
        <CircuitDrawing id="divider-circuit" circuit={circuit} closed={closed} open={open} />
      </div>
      <div class="divider-answer">
        {said.answer.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <h3>{dividerWords.steps}</h3>
      <ol class="divider-steps">
        {said.steps.map(({ what, formula, line }) => (
          <li key={what}>
            <a href={formulas + formula}>{what}</a>
            <span class="line">{line}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** A slider with its name above it and its value, with the unit, beside that. */
function Slider(props: {
  readonly name: string;
  readonly label: string;
  readonly shown: string;
  /** What a screen reader says: the value and what it does. */
  readonly said: string;
  readonly most: number;
  readonly value: number;
  readonly onValue: (value: number) => void;
}) {
  const { name, label, shown, said, most, value, onValue } = props;
  return (
    <div class="divider-slider">
      <label for={`divider-${name}`}>{label}</label>
      <output for={`divider-${name}`} aria-live="off">
        {shown}
      </output>
      <input
        id={`divider-${name}`}
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
