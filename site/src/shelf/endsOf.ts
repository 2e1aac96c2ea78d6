import type { ShelfResult } from './shelf.js';

/** What of a result is compared over the seasons: the readings at the stops, V, as far as they were measured, and how many findings. */
export function endsOf({ score }: ShelfResult): {
  readonly closed?: number;
  readonly open?: number;
  readonly findings: number;
} {
  const checks = Array.isArray(score.checks) ? score.checks : [];
  const measured = (which: string) => checks.find(({ check }) => check === which)?.measured;
  const [closed, open] = [measured('closed-end'), measured('open-end')];
  return {
    ...(closed !== undefined && { closed }),
    ...(open !== undefined && { open }),
    findings: Array.isArray(score.findings) ? score.findings.length : 0,
  };
}
