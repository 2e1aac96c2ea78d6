const moment = { unit: 's', low: 0, high: 1e6, initial: '', optional: true } as const;

/** When each deliberate test began and ended, s, on the recording's clock. */
export const momentEntries = {
  flexedFrom: moment,
  flexedTo: moment,
  tappedFrom: moment,
  tappedTo: moment,
  warmedFrom: moment,
  warmedTo: moment,
} as const;
