/// <reference types="astro/client" />
import { formatQuantity } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { dividerSentences, dividerWords, readingsWords } from '@truesweep/wording';
import { useMemo, useState } from 'preact/hooks';
import { type DividerEntries, firstEntries, loadedDivider, loads } from './loadedDivider.js';
import { Slider } from './Slider.js';

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
    <section class="played divider not-content" aria-label={dividerWords.title}>
      <div class="played-entries">
        <Slider
          id="divider-load"
          label={dividerWords.load}
          shown={facts.load}
          said={dividerWords.off(facts.load, facts.off)}
          most={loads.length - 1}
          value={loads.indexOf(entries.load)}
          onValue={(at) => set({ load: loads[at] ?? entries.load })}
        />
        <Slider
          id="divider-position"
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
      {entries.limiter === 0 && <p class="played-caution">{readingsWords.noLimiter}</p>}
      <div class="played-drawings">
        <CurveDrawing
          id="divider-curve"
          curve={loaded}
          compared={unloaded}
          markers={[{ travel: entries.position, volts: reading, label: facts.loaded }]}
        />
        <CircuitDrawing id="divider-circuit" circuit={circuit} closed={closed} open={open} />
      </div>
      <div class="played-answer">
        {said.answer.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <h3>{dividerWords.steps}</h3>
      <ol class="played-steps">
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
