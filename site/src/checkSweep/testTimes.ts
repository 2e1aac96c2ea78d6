/** The deliberate tests with the entries that say when each began and ended. */
export const testTimes = [
  { kind: 'harness-flexed', from: 'flexedFrom', to: 'flexedTo' },
  { kind: 'housing-tapped', from: 'tappedFrom', to: 'tappedTo' },
  { kind: 'warmed', from: 'warmedFrom', to: 'warmedTo' },
] as const;
