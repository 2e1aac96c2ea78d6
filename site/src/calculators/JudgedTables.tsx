import {
  judgedReadingWords,
  type ReadingsOfKind,
  readingCheckRows,
  readingUnsaidSentences,
} from '@truesweep/wording';
import { DataTable } from '../forms/DataTable.js';

/** Each reading beside its limits, and what all of them leave unsaid. */
export function JudgedTables({ judged }: { readonly judged: ReadingsOfKind }) {
  const [head = [], ...rows] = readingCheckRows(judged);
  const unsaid = readingUnsaidSentences(judged);
  return (
    <>
      <DataTable id="checks" caption={judgedReadingWords.checks} head={head} rows={rows} />
      <p class="small">{judgedReadingWords.spread}</p>
      {unsaid.length > 0 && (
        <section aria-labelledby="unsaid">
          <h2 id="unsaid">{judgedReadingWords.unsaid}</h2>
          <ul>
            {unsaid.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
