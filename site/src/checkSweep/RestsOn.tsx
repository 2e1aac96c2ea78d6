import { checkPageWords } from '@truesweep/wording';
import type { RestsOnRow } from './protocol.js';

/** The values that verdicts rest on. */
export function RestsOn({ rows }: { readonly rows: readonly RestsOnRow[] }) {
  return (
    <section class="rests-on" aria-label={checkPageWords.restsOn}>
      <p>{checkPageWords.restsOn}:</p>
      <dl>
        {rows.map(([label, text]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
