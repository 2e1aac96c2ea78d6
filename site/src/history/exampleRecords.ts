import type { HistoryRecord } from '@truesweep/history';

/** Readings at the closed stop, V, spring after spring: one drifts toward its limit, one stays. */
const sensors = {
  'Port engine': [0.417, 0.4415, 0.463, 0.479],
  'Starboard engine': [0.4165, 0.418, 0.4155, 0.417],
} as const;

/** The invented seasons of a workshop's two sensors, which the page shows until it is given others. */
export const exampleRecords: readonly HistoryRecord[] = Object.entries(sensors).flatMap(
  ([sensor, readings]) =>
    readings.map(
      (volts, season): HistoryRecord => ({
        kind: 'truesweep-record',
        form: 1,
        sensor,
        recording: String(season).padStart(64, '0'),
        date: `${2023 + season}-04-0${2 + season}`,
        dateFrom: 'told',
        file: `${sensor.toLowerCase().replace(' ', '-')}-${2023 + season}.csv`,
        verdict: 'pass',
        closed: { volts, uncertainty: 0.0015, low: 0.33, high: 0.51 },
        open: {
          volts: 3.664 + 0.001 * ((season * 7) % 3),
          uncertainty: 0.004,
          low: 3.42,
          high: 3.82,
        },
        hysteresis: 0.0018 + 0.0002 * ((season * 5) % 3),
        noise: 0.0011,
        visible: 0.02,
        roughness: 0,
        findings: 0,
        recorder: { interval: 0.001, resolution: 0.001 },
      }),
    ),
);
