/** A figure for Prometheus. */
export interface Metric {
  /** Its name: letters, digits and underscores. */
  readonly name: string;
  /** What it counts, in a sentence. */
  readonly help: string;
  /** A `counter` only grows; a `gauge` goes up and down; a `histogram` has samples with the suffixes `_bucket`, `_sum` and `_count`. */
  readonly type: 'counter' | 'gauge' | 'histogram';
  /** Its values. */
  readonly samples: readonly {
    /** What follows the name; nothing when left out. */
    readonly suffix?: '_bucket' | '_sum' | '_count';
    /** What tells it from the others of its name; nothing when left out. */
    readonly labels?: Readonly<Record<string, string>>;
    /** The value, in the base unit that the name tells; any. */
    readonly value: number;
  }[];
}

/**
 * Figures in Prometheus' text format 0.0.4. It is written here: a library for it brings two more, and keeps what a worker has in a few counters anyway.
 *
 * @example
 * const samples = [{ labels: { outcome: 'pass' }, value: 3 }];
 * metricsText([{ name: 'judged_total', help: 'Recordings.', type: 'counter', samples }]).split('\n')[2] // => 'judged_total{outcome="pass"} 3'
 */
export function metricsText(metrics: readonly Metric[]): string {
  return metrics
    .flatMap(({ name, help, type, samples }) => [
      `# HELP ${name} ${help.replaceAll('\\', '\\\\').replaceAll('\n', '\\n')}\n`,
      `# TYPE ${name} ${type}\n`,
      ...samples.map(
        ({ suffix = '', labels = {}, value }) =>
          `${name}${suffix}${labelsText(labels)} ${valueText(value)}\n`,
      ),
    ])
    .join('');
}

function labelsText(labels: Readonly<Record<string, string>>): string {
  const written = Object.entries(labels).map(
    ([name, value]) =>
      `${name}="${value.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replaceAll('\n', '\\n')}"`,
  );
  return written.length === 0 ? '' : `{${written.join(',')}}`;
}

function valueText(value: number): string {
  if (Number.isFinite(value)) return String(value);
  return Number.isNaN(value) ? 'NaN' : value > 0 ? '+Inf' : '-Inf';
}
