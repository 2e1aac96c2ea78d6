import { checkPageWords } from '@truesweep/wording';
import { namesOf, type Texts } from '../forms/form.js';
import { jobForm } from './jobForm.js';

/** Where one says that the entries, which stand beside it, are those of one's own sensor. */
export function Mine(props: {
  readonly texts: Texts<(typeof jobForm)['entries']>;
  readonly isMine: boolean;
  readonly isWrong: boolean;
  readonly onMine: (isMine: boolean) => void;
}) {
  const { texts, isMine, isWrong, onMine } = props;
  const entered = namesOf(jobForm).filter(
    (name) => texts[name].trim() !== '' && (name !== 'pullUpVolts' || texts.pullUp.trim() !== ''),
  );
  return (
    <div class="mine">
      <label>
        <input
          type="checkbox"
          name="mine"
          checked={isMine}
          disabled={isWrong}
          aria-describedby="mine-values"
          onChange={(event) => onMine(event.currentTarget.checked)}
        />{' '}
        {checkPageWords.mine}
      </label>
      <p class="hint" id="mine-values">
        {entered.map((name) => `${jobForm.labels[name]}: ${texts[name]}`).join(' · ')}
      </p>
    </div>
  );
}
