/** What is true of a case, by design. */
export interface Truth {
  /** `sound`: all is within the limits. `visible`: something lies beyond a limit by at least three standard uncertainties. `hidden`: by less. */
  readonly state: 'sound' | 'visible' | 'hidden';
  /** Whether what was read, and by which instruments, is enough to tell. */
  readonly adequate: boolean;
}

/** How far something true lies outside its limits, in standard uncertainties; 0 inside. */
export function outsideBy(value: number, low: number, high: number, uncertainty: number): number {
  const outside = Math.max(low - value, value - high);
  return outside <= 0 ? 0 : outside / uncertainty;
}

/** The state of what lies outside by so many standard uncertainties at its worst place. */
export function stateOf(outside: number): Truth['state'] {
  if (outside === 0) return 'sound';
  return outside >= 3 ? 'visible' : 'hidden';
}
