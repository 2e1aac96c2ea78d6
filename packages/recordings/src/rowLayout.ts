import type { ReadColumns } from './chooseColumns.js';
import type { Dialect } from './findDialect.js';

/** Where the rows of a file are and what is read from them. */
export interface RowLayout extends Dialect {
  readonly fields: number;
  readonly columns: ReadColumns;
  /** The lines of headings, which are passed over where they stand again. */
  readonly headingLines: readonly string[];
  /** Samples per second, where there is no column of times. */
  readonly sampleRate?: number;
}
