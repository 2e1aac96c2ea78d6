import { isInputError } from '@truesweep/core';
import { type Working, workingHtml } from '@truesweep/explain';

/** A working as a page shows it. */
export interface Written {
  readonly title: string;
  /** HTML with MathML, every text in it escaped. */
  readonly html: string;
}

/** Workings ready to be shown; those that none is written for are left out. */
export function written(...makes: readonly (() => Working)[]): readonly Written[] {
  return makes.flatMap((make) => {
    try {
      const working = make();
      return [{ title: working.title, html: workingHtml(working) }];
    } catch (error) {
      if (isInputError(error)) return [];
      throw error;
    }
  });
}
