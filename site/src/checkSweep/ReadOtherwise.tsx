import { columnChoice, judgeWords, readingUnitLabels } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Look, ReadBy } from './protocol.js';
import { type ReadingTexts, readByOf, textsOf } from './readingTexts.js';

const timeUnits: Readonly<Record<string, string>> = { s: 's', ms: 'ms', µs: 'µs' };

/** Choosers of columns and units, without writing a job: for a text its columns, for a sound its scale. */
export function ReadOtherwise(props: {
  readonly look: Look;
  readonly read: ReadBy;
  readonly onRead: (read: ReadBy) => void;
}) {
  const { look, read, onRead } = props;
  const [texts, setTexts] = useState(() => textsOf(read));
  const set = (change: Partial<ReadingTexts>) => {
    const next = { ...texts, ...change };
    setTexts(next);
    onRead(readByOf(next, look.isSound));
  };
  const found: Readonly<Record<string, string>> = { '': judgeWords.asFound };
  const columns = Object.fromEntries(
    look.headings.map((heading, i) => [`${i}`, columnChoice(i + 1, heading)]),
  );
  const choose = (name: keyof ReadingTexts, label: string, choices: Record<string, string>) => (
    <Told name={name} label={label}>
      <select id={`read-${name}`} onChange={(event) => set({ [name]: event.currentTarget.value })}>
        {Object.entries(choices)
          .sort(([one], [other]) => Number(one !== '') - Number(other !== ''))
          .map(([value, words]) => (
            <option key={value} value={value} selected={value === texts[name]}>
              {words}
            </option>
          ))}
      </select>
    </Told>
  );
  const number = (name: keyof ReadingTexts, label: string) => (
    <Told name={name} label={label}>
      <input
        id={`read-${name}`}
        inputMode="decimal"
        autocomplete="off"
        value={texts[name]}
        onInput={(event) => set({ [name]: event.currentTarget.value })}
      />
    </Told>
  );
  if (look.isSound)
    return (
      <div class="read-otherwise">
        {number('soundFullScale', judgeWords.soundFullScale)}
        {number('attenuation', judgeWords.attenuation)}
        <label class="tick">
          <input
            type="checkbox"
            checked={texts.microphone === 'off'}
            onChange={(event) => set({ microphone: event.currentTarget.checked ? 'off' : '' })}
          />{' '}
          {judgeWords.microphoneOff}
        </label>
      </div>
    );
  return (
    <div class="read-otherwise">
      {choose('timeColumn', judgeWords.timeColumn, {
        ...found,
        ...columns,
        none: judgeWords.noTimes,
      })}
      {texts.timeColumn === 'none'
        ? number('rate', judgeWords.rate)
        : choose('timeUnit', judgeWords.timeUnit, { ...found, ...timeUnits })}
      {choose('signalColumn', judgeWords.signalColumn, { ...found, ...columns })}
      {choose('signalUnit', judgeWords.signalUnit, { ...found, ...readingUnitLabels })}
      {texts.signalUnit === 'counts' && number('bits', judgeWords.bits)}
      {(texts.signalUnit === 'counts' || texts.signalUnit === '%') &&
        number('fullScale', judgeWords.fullScale)}
      {choose('supplyColumn', judgeWords.supplyColumn, { '': judgeWords.noSupply, ...columns })}
    </div>
  );
}

function Told(props: {
  readonly name: string;
  readonly label: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="entry text">
      <label for={`read-${props.name}`}>{props.label}</label>
      {props.children}
    </div>
  );
}
