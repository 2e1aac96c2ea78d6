import { judgeWords } from '@truesweep/wording';
import { namesOf, type Texts } from '../forms/form.js';
import { ShelfChoice } from '../shelf/ShelfChoice.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import { jobForm } from './jobForm.js';

/** Where one says which sensor and hook-up a recording is of: one of the shelf, or what stands in the entries. */
export function WhichSensor(props: {
  readonly texts: Texts<(typeof jobForm)['entries']>;
  readonly isMine: boolean;
  readonly isWrong: boolean;
  readonly sensor: ShelfSensor | undefined;
  readonly onSensor: (sensor: ShelfSensor | undefined) => void;
  /** What is pressed to say that the entries are one's own. */
  readonly mine?: string;
  readonly onMine: () => void;
}) {
  const { texts, isMine, isWrong, sensor, onSensor, onMine, mine = judgeWords.judge } = props;
  const entered = namesOf(jobForm).filter(
    (name) =>
      texts[name].trim() !== '' &&
      jobForm.entries[name].unit !== 'choice' &&
      (name !== 'pullUpVolts' || texts.pullUp.trim() !== ''),
  );
  return (
    <section class="which-sensor" aria-label={judgeWords.sensor}>
      <h2>{judgeWords.sensor}</h2>
      <ShelfChoice chosen={sensor?.id} onSensor={onSensor} />
      <p class="hint" id="mine-values">
        {entered.map((name) => `${jobForm.labels[name]}: ${texts[name]}`).join(' · ')}
      </p>
      {!isMine && (
        <button
          type="button"
          class="main"
          disabled={isWrong}
          aria-describedby="mine-values"
          onClick={onMine}
        >
          {mine}
        </button>
      )}
    </section>
  );
}
