import { formWords } from '@truesweep/wording';

/** On paper only: what is expected, with room for what is read. */
export function BenchSheet({ rows }: { readonly rows: readonly (readonly [string, string])[] }) {
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
          {rows.map(([place, expected]) => (
            <tr key={place}>
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
