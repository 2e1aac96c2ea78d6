import { exerciseSetWords, sheetWords as words } from '@truesweep/wording/working';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import {
  mostSheets,
  readSheetAddress,
  type SheetChoice,
  sheetLevels,
  sheetSearch,
  sheetTopics,
} from './sheetAddress.js';

const asItComes = readSheetAddress('');

/** Chooses a sheet of exercises, which its address names, and shows it; what makes exercises is fetched once the page runs. */
export function ExerciseSheet() {
  const [{ choice, refused }, setRead] = useState(asItComes);
  const [Sheet, setSheet] = useState<ComponentType<SheetChoice>>();
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    setRead(readSheetAddress(location.search));
    import('./Sheet.js').then((code) => setSheet(() => code.Sheet)).catch(() => setMissing(true));
  }, []);
  const make = (form: HTMLFormElement) => {
    const entered = new FormData(form);
    const search = `?${new URLSearchParams({
      seed: String(entered.get('seed')),
      level: String(entered.get('level')),
      topics: entered.getAll('topic').join(','),
    })}`;
    const read = readSheetAddress(search);
    setRead(read);
    history.replaceState(null, '', sheetSearch(read.choice));
  };
  const { seed, level, topics } = choice;
  return (
    <section class="sheet not-content">
      <form
        // The fields follow the address once it is read.
        key={sheetSearch(choice)}
        onSubmit={(event) => {
          event.preventDefault();
          make(event.currentTarget);
        }}
      >
        <label>
          {words.seed}{' '}
          <input
            name="seed"
            type="text"
            inputMode="numeric"
            maxLength={String(mostSheets).length + 3}
            autocomplete="off"
            value={seed}
          />
        </label>
        <label>
          {words.level}{' '}
          <select name="level">
            {sheetLevels.map((one) => (
              <option key={one} value={one} selected={one === level}>
                {words.levels[one]}
              </option>
            ))}
          </select>
        </label>
        <fieldset>
          <legend>{words.topics}</legend>
          {sheetTopics.map((topic) => (
            <label key={topic}>
              <input
                type="checkbox"
                name="topic"
                value={topic}
                defaultChecked={topics.includes(topic)}
              />
              {words.topicLabels[topic]}
            </label>
          ))}
        </fieldset>
        <div class="exercise-buttons">
          <button type="submit">{words.make}</button>
          <button type="button" onClick={() => print()}>
            {words.print}
          </button>
          <a href={sheetSearch(choice)}>{words.link}</a>
        </div>
      </form>
      <div role="status">
        {refused.map((sentence) => (
          <p key={sentence} class="exercises-notice">
            {sentence}
          </p>
        ))}
      </div>
      {isMissing && <p role="alert">{exerciseSetWords.notFetched}</p>}
      {Sheet && <Sheet key={sheetSearch(choice)} {...choice} />}
    </section>
  );
}
