import type { LessonSteps } from './lesson.js';

/** Workings one below the other, the first unfolded. */
export function Steps({ says = [], workings }: LessonSteps) {
  return (
    <div class="workings" data-pagefind-ignore>
      {says.length > 0 && (
        <div class="lesson-says">
          {says.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
      {workings.map(({ title, html }, i) => (
        <details key={i} class="working" open={i === 0}>
          <summary>{title}</summary>
          {/* Written by the package of workings, which escapes every text. */}
          <div dangerouslySetInnerHTML={{ __html: html }} />
        </details>
      ))}
    </div>
  );
}
