/** Headings of a working. */
export const workingLabels = {
  given: 'Given',
  restsOn: 'Rests on',
} as const;

/** What a page says where it shows workings. */
export const workingWords = {
  show: 'Show the working',
  fetching: 'Writing it out …',
  mend: 'Mend the entries above first.',
  failed: 'The working could not be fetched or written; the result above stands.',
  part: 'Of many findings the three deepest are written; none is written where only a search or a simulation leads to the number.',
  none: 'No working is written for these entries; the result above stands.',
} as const;
