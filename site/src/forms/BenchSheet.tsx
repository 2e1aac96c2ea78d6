import { formWords } from '@truesweep/wording';
import type { ShownResult } from './Calculator.js';

/** Room for what is read where nothing is expected. */
const blank = Array.from({ length: 3 }, () => ['', ''] as const);

/** On paper only: what is expected, with room for what is read. */
export function BenchSheet({ rows = blank }: { readonly rows: ShownResult['sheet'] }) {
  return (
    <section class="bench-sheet">
      <p>{formWords.sheetNotes}</p>
      <table>
        <caption>{formWords.sheet}</caption>
        <thead>
          <tr>
            <th scope="col">{formWords.place}</th>
            <th scope="col">{formWords.expected}</th>
            <th scope="col">{formWords.read}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([place, expected], i) => (
            <tr key={place || i}>
              <th scope="row">{place}</th>
              <td>{expected}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
