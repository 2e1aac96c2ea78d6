import { HookUpPicture } from '@truesweep/drawings';
import { type SweepTask, sweepTaskLabels, wayWords } from '@truesweep/wording';
import { useMemo } from 'preact/hooks';
import { hookUpEntries } from '../calculators/hookUpEntries.js';
import { testTimes } from '../checkSweep/testTimes.js';
import { EntryField } from '../forms/EntryField.js';
import { readEntry } from '../forms/entry.js';
import { namesOf, readForm } from '../forms/form.js';
import { useEntries } from '../forms/useEntries.js';
import { sweepForm } from './sweepForm.js';
import type { Way } from './way.js';
import { inWay, type WayStore } from './wayStore.js';

/** What is done while the recorder runs, each to be ticked; the times of the deliberate tests are entered where they are made. */
export function SweepStep(props: {
  readonly store: WayStore;
  readonly way: Way;
  readonly onTick: (task: SweepTask, isDone: boolean) => void;
}) {
  const { store, way, onTick } = props;
  const keeping = useMemo(() => inWay(store, namesOf(sweepForm)), [store]);
  const { texts, setText } = useEntries(sweepForm, keeping);
  const read = readForm(sweepForm, texts);
  const refusals = 'refusals' in read ? read.refusals : {};
  const tasks = Object.entries(sweepTaskLabels) as [SweepTask, string][];
  return (
    <div class="readings brief not-content">
      <div class="picture">
        <HookUpPicture
          id="sweep-picture"
          source={enteredOr('source', way)}
          limiter={enteredOr('limiter', way)}
          track={enteredOr('track', way)}
        />
      </div>
      <fieldset class="ticks">
        <legend>{wayWords.tasks}</legend>
        {tasks.map(([code, label]) => {
          const test = testTimes.find(({ kind }) => kind === code);
          const isDone = way.done.includes(code);
          return (
            <div key={code}>
              <label>
                <input
                  type="checkbox"
                  name={code}
                  checked={isDone}
                  onChange={(event) => onTick(code, event.currentTarget.checked)}
                />{' '}
                {label}
              </label>
              {test && isDone && (
                <div class="times">
                  {[test.from, test.to].map((name) => (
                    <EntryField
                      key={name}
                      name={name}
                      label={sweepForm.labels[name]}
                      hint={sweepForm.hints[name]}
                      entry={sweepForm.entries[name]}
                      text={texts[name]}
                      refusal={refusals[name]}
                      onText={(text) => setText(name, text)}
                    />
                  ))}
                </div>
              )}
            </div>
          );
        })}
      </fieldset>
    </div>
  );
}

/** What was entered of a part; what stands first where that can't be used. */
function enteredOr(name: 'source' | 'limiter' | 'track', { texts }: Way): number {
  const entry = hookUpEntries[name];
  for (const text of [texts[name] ?? '', entry.initial]) {
    try {
      return Number(readEntry(name, name, entry, text));
    } catch {
      // The example's part is drawn then.
    }
  }
  return 0;
}
