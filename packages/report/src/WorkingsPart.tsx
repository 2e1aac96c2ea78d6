import { type Working, workingHtml } from '@truesweep/explain/written';
import { reportWords, workingWords } from '@truesweep/wording';

/** What an appendix tells of one recording, or of a job's single readings. */
export interface Worked {
  readonly name: string;
  /** None when left out. */
  readonly workings?: readonly Working[];
}

/** The appendix: how the numbers of each come about, each working folded away. */
export function WorkingsPart({ of }: { readonly of: readonly Worked[] }) {
  const worked = of.filter(({ workings = [] }) => workings.length > 0);
  if (worked.length === 0) return null;
  return (
    <section class="appendix">
      <h2>{reportWords.workings}</h2>
      <p>{workingWords.part}</p>
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
