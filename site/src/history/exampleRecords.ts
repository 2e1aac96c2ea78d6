import type { HistoryRecord } from '@truesweep/history';

/** Readings of one year's recordings, V: closed and open stop, hysteresis, noise. */
type Year = readonly [
  date: string,
  closed: number,
  open: number,
  hysteresis: number,
  noise: number,
];

/** Invented: its closed reading rises from year to year. */
const port: readonly Year[] = [
  ['2022-04-11', 0.5021, 4.4853, 0.0021, 0.0011],
  ['2023-04-03', 0.5069, 4.4861, 0.0017, 0.0012],
  ['2024-04-16', 0.5128, 4.4849, 0.0024, 0.0011],
  ['2025-04-07', 0.5171, 4.4858, 0.0019, 0.0011],
  ['2026-04-13', 0.5226, 4.4855, 0.0022, 0.0012],
];

/** Invented: it stays as it was. */
const starboard: readonly Year[] = [
  ['2022-04-11', 0.4962, 4.4902, 0.0016, 0.0011],
  ['2023-04-03', 0.4971, 4.4894, 0.0021, 0.0011],
  ['2024-04-16', 0.4958, 4.4899, 0.0018, 0.0012],
  ['2025-04-07', 0.4967, 4.4907, 0.0023, 0.0012],
  ['2026-04-13', 0.4963, 4.4896, 0.0017, 0.0011],
];

/** The invented records that the page shows until there are others: of each sensor by itself. */
export const exampleRecords: readonly (readonly HistoryRecord[])[] = [
  port.map((year, i) => recordOfYear('Port engine', `a${i}`, year)),
  starboard.map((year, i) => recordOfYear('Starboard engine', `b${i}`, year)),
];

function recordOfYear(
  sensor: string,
  mark: string,
  [date, closed, open, hysteresis, noise]: Year,
): HistoryRecord {
  const uncertainty = 0.0008;
  return {
    kind: 'truesweep-record',
    form: 1,
    sensor,
    recording: mark.repeat(32),
    date,
    dateFrom: 'told',
    file: `${date} ${sensor}.csv`,
    verdict: 'pass',
    closed: { volts: closed, uncertainty, low: 0.45, high: 0.55 },
    open: { volts: open, uncertainty, low: 4.43, high: 4.53 },
    noise,
    visible: 0.02,
    hysteresis,
    roughness: 0,
    findings: 0,
    recorder: { interval: 0.001, resolution: 0.0012 },
  };
}
