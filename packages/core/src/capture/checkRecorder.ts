import { InputError } from '../errors.js';
import { finiteBetween, oneOf, positive } from '../guard.js';
import type { Recorder } from './captureQuality.js';
import type { Sampling } from './sampling.js';

const samplings: readonly Sampling[] = ['picked', 'averaged', 'peak-kept', 'interpolated'];
const most = 1e12;
/** A source reads at least this much more than joined leads, V. */
const leastReading = 1e-3;

/** Refuses what no recorder can be; each field may be left out. */
export function checkRecorder({
  resolution,
  range,
  uncertainty,
  coupling = 'dc',
  sampling = 'picked',
  sampledEvery,
  before,
  after,
}: Recorder): void {
  oneOf(coupling, ['dc', 'ac'], 'recorder.coupling');
  oneOf(sampling, samplings, 'recorder.sampling');
  if (sampling === 'interpolated' || sampledEvery !== undefined)
    positive(sampledEvery, 'recorder.sampledEvery', 's');
  if (resolution !== undefined) finiteBetween(resolution, 0, most, 'recorder.resolution', 'V');
  if (uncertainty !== undefined) finiteBetween(uncertainty, 0, most, 'recorder.uncertainty', 'V');
  if (range) {
    finiteBetween(range.low, -most, most, 'recorder.range.low', 'V');
    finiteBetween(range.high, range.low, most, 'recorder.range.high', 'V');
  }
  for (const [name, readings] of [
    ['before', before],
    ['after', after],
  ] as const) {
    if (!readings) continue;
    const path = `recorder.${name}`;
    finiteBetween(readings.zero, -most, most, `${path}.zero`, 'V');
    finiteBetween(readings.source, -most, most, `${path}.source`, 'V');
    if (readings.source - readings.zero >= leastReading) continue;
    throw new InputError(
      'no-span',
      `${path}.source`,
      `${path}.source is ${readings.source} V, not a millivolt above ${path}.zero; a source's reading lies above the zero's.`,
    );
  }
}
