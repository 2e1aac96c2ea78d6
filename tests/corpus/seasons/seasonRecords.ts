import type { HistoryRecord } from '@truesweep/history';

/** What is invented of a sensor over the seasons. */
export interface Season {
  readonly sensor: string;
  /** One of these each season: what is drawn for the closed and the open reading, for hysteresis and noise; normal with mean 0 and deviation 1. */
  readonly draws: readonly (readonly [
    closed: number,
    open: number,
    hysteresis: number,
    noise: number,
  ])[];
  /** Standard deviation of a reading from one recording to the next, V. */
  readonly repeatability: number;
  /** Change of the closed reading each season, in repeatabilities. */
  readonly drift: number;
}

/** One recording each season, of a sensor on a hook-up of 0.5 to 4.5 V. */
export function seasonRecords({ sensor, draws, repeatability, drift }: Season): HistoryRecord[] {
  return draws.map(([closed, open, hysteresis, noise], season) => ({
    kind: 'truesweep-record',
    form: 1,
    sensor,
    recording: `${season}`.padStart(64, '0'),
    date: `${2020 + season}-04-${String(10 + season).padStart(2, '0')}`,
    dateFrom: 'told',
    file: `${sensor}-${season}.csv`,
    verdict: 'pass',
    closed: {
      volts: 0.5 + repeatability * (closed + drift * season),
      uncertainty: repeatability / 3,
      low: 0.35,
      high: 0.65,
    },
    open: {
      volts: 4.5 + repeatability * open,
      uncertainty: repeatability / 3,
      low: 4.3,
      high: 4.7,
    },
    hysteresis: repeatability * hysteresis,
    noise: 0.002 * (1 + 0.1 * noise),
    visible: 0.02,
    roughness: 0,
    findings: 0,
    recorder: { interval: 0.0002, resolution: 0.001 },
  }));
}
