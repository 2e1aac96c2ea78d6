import { workingHtml } from '@truesweep/explain/written';
import { reportWords } from '@truesweep/wording';
import type { Report } from './report.js';

/** The appendix: how the numbers of each recording come about, each working folded away. */
export function WorkingsPart({ recordings }: Pick<Report, 'recordings'>) {
  const worked = recordings.filter(({ workings = [] }) => workings.length > 0);
  if (worked.length === 0) return null;
  return (
    <section class="appendix">
      <h2>{reportWords.workings}</h2>
      {worked.map(({ name, workings = [] }) => (
        <section key={name}>
          <h3>{name}</h3>
          {workings.map((working) => (
            <details key={working.title} class="working">
              <summary>{working.title}</summary>
              {/* The package of workings escapes every text. */}
              <div dangerouslySetInnerHTML={{ __html: workingHtml(working) }} />
            </details>
          ))}
        </section>
      ))}
    </section>
  );
}
