import { type Working, whereWritten, workingHtml } from '@truesweep/explain';

/** A working as a page shows it. */
export interface Written {
  readonly title: string;
  /** HTML with MathML, every text in it escaped. */
  readonly html: string;
}

/** Workings ready to be shown. */
export function written(...makes: readonly (() => Working)[]): readonly Written[] {
  return whereWritten(...makes).map(toBeShown);
}

export function toBeShown(working: Working): Written {
  return { title: working.title, html: workingHtml(working) };
}
