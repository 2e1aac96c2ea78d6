import { judgeWords } from '@truesweep/wording';
import { FirstLines } from './FirstLines.js';
import type { Look, ReadBy } from './protocol.js';
import { ReadOtherwise } from './ReadOtherwise.js';
import { shortName } from './shortName.js';

/** What chosen files hold, shown before they are judged, with choosers where it should be read otherwise. */
export function Looked(props: {
  readonly looks: readonly Look[];
  readonly read: ReadBy;
  readonly onRead: (read: ReadBy) => void;
}) {
  const { looks, read, onRead } = props;
  const first = looks[0];
  if (!first) return null;
  const isRefused = looks.some((look) => 'refusal' in look.read);
  const canBeTold = looks.some(({ isSound, lines }) => isSound || lines.length > 0);
  return (
    <section class="looked" aria-label={judgeWords.read}>
      {looks.map((look) => (
        <div key={look.name} class="look">
          <h2>{shortName(look.name)}</h2>
          {'refusal' in look.read ? (
            <p class="refusal" role="alert">
              {look.read.refusal}
            </p>
          ) : (
            <>
              <div class="small-trace" dangerouslySetInnerHTML={{ __html: look.read.svg }} />
              <p>
                {look.read.extent} <span class="hint">{look.read.howRead}</span>
              </p>
            </>
          )}
        </div>
      ))}
      {canBeTold && (
        <details open={isRefused}>
          <summary>{judgeWords.otherwise}</summary>
          {first.lines.length > 0 && <FirstLines look={first} />}
          <ReadOtherwise look={first} read={read} onRead={onRead} />
        </details>
      )}
    </section>
  );
}
