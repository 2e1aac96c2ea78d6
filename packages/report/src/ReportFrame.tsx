import { type Caution, cautions, reportWords, scoreLabels } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { filingRows } from './filingRows.js';
import type { FilingRecord } from './report.js';

/** What every report has around what was judged: what it is and is filed by above, cautions and room for a signature below. */
export function ReportFrame(props: {
  readonly kind: string;
  readonly title: string;
  readonly writtenAt: string;
  readonly record: FilingRecord | undefined;
  readonly cautions: readonly Caution[];
  readonly children: ComponentChildren;
}) {
  const { kind, title, writtenAt, record, cautions: these, children } = props;
  const filed = filingRows(record);
  return (
    <main>
      <header>
        <p class="kind">{kind}</p>
        <h1>{title}</h1>
        <p>
          {reportWords.written} {writtenAt}
        </p>
        {filed.length > 0 && (
          <dl class="filed">
            {filed.map(([label, value]) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
      </header>
      {children}
      <section class="cautions">
        <h2>{scoreLabels.cautions}</h2>
        <ul>
          {these.map((one) => (
            <li key={one}>{cautions[one]}</li>
          ))}
        </ul>
      </section>
      <p class="signature">
        <span>{reportWords.examined}</span>
        <span>{reportWords.date}</span>
        <span>{reportWords.signature}</span>
      </p>
    </main>
  );
}
