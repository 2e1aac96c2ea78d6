import { judgeWords } from '@truesweep/wording';
import type { Look } from './protocol.js';

/** The first lines of a file, field by field, the columns that are read marked. */
export function FirstLines({ look }: { readonly look: Look }) {
  const chosen = 'refusal' in look.read ? [] : [look.read.timeColumn, look.read.signalColumn];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must take the focus
    <section class="wide" aria-label={judgeWords.firstLines} tabIndex={0}>
      <table class="first-lines">
        <caption>{judgeWords.firstLines}</caption>
        <tbody>
          {look.lines.map((fields, row) => (
            <tr key={row}>
              {fields.map((field, column) => (
                <td key={column} class={chosen.includes(column) ? 'read' : undefined}>
                  {field}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
