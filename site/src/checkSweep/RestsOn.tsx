import { checkPageWords } from '@truesweep/wording';
import type { RestsOnRow } from './protocol.js';

/** So many values stand in the heading, the others below it. */
const inHeading = 3;

/** The values that verdicts rest on: the first ones at once, all of them unfolded. */
export function RestsOn({ rows }: { readonly rows: readonly RestsOnRow[] }) {
  return (
    <details class="rests-on">
      <summary>
        {checkPageWords.restsOn}:{' '}
        {rows
          .slice(0, inHeading)
          .map(([label, text]) => `${label} ${text}`)
          .join(', ')}{' '}
        …
      </summary>
      <dl>
        {rows.map(([label, text]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
