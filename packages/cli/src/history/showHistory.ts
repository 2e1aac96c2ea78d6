import { InputError, nearestName } from '@truesweep/core';
import {
  type HistoryRecord,
  type SensorHistory,
  type SharedScatter,
  sensorHistory,
  sharedScatter,
} from '@truesweep/history';
import { saveHistory } from '@truesweep/history/node';
import { writeFileAtomically } from '@truesweep/jobs/node';
import { noStoreSentence, savedRecordsSentence, unknownSensorSentence } from '@truesweep/wording';
import { jsonText } from '../jsonText.js';
import { layOut } from '../layOut.js';
import type { ListedSensor } from '../printedData.js';
import { refuseInput } from '../refuseInput.js';
import type { Output } from '../terminal.js';
import { addToHistory } from './addToHistory.js';
import { looseRecords } from './looseRecords.js';
import { printHistoryList } from './printHistoryList.js';
import { printSensorHistory } from './printSensorHistory.js';
import { withHistory } from './withHistory.js';

export interface HistoryOptions {
  readonly store?: string;
  readonly sensor?: string;
  readonly save?: string;
  readonly json?: true;
}

/** Where records are looked up. */
interface Records {
  readonly names: readonly string[];
  readonly of: (sensor: string) => readonly HistoryRecord[];
}

/**
 * Adds sources to a history, or only looks at them, and prints what changed of all sensors or of one; or saves a damaged history.
 *
 * @throws InputError for what can't be read or written, and for a sensor that isn't known.
 */
export async function showHistory(
  sources: readonly string[],
  { store, sensor, save, json }: HistoryOptions,
  output: Output,
): Promise<void> {
  if (save !== undefined) {
    if (store === undefined || sources.length > 0)
      throw new InputError('missing', '--store', noStoreSentence);
    await saveInto(save, store, json === true, output);
    return;
  }
  const show = (records: Records) => {
    output.print(
      sensor === undefined
        ? listText(records, json, output)
        : sensorText(sensor, records, json, output),
    );
  };
  if (store === undefined) {
    if (sources.length === 0) throw new InputError('missing', '--store', noStoreSentence);
    const loose = await looseRecords(sources, output);
    show({ names: [...loose.keys()], of: (name) => loose.get(name) ?? [] });
    return;
  }
  await withHistory(store, sources.length > 0, async (history) => {
    if (sources.length > 0) await addToHistory(history, sources, store, output);
    show({ names: history.sensors().map((one) => one.sensor), of: history.records });
  });
}

async function saveInto(out: string, store: string, json: boolean, output: Output): Promise<void> {
  await refuseInput(out, [store]);
  const saved = await saveHistory(store);
  await writeFileAtomically(out, saved.map((one) => `${JSON.stringify(one)}\n`).join(''));
  output.print(
    json
      ? jsonText('history', { out, records: saved.length })
      : `${savedRecordsSentence(saved.length, out)}\n`,
  );
}

function listText(records: Records, json: true | undefined, output: Output): string {
  const shared = scatterOf(records);
  const sensors = records.names.map((name) => listed(sensorHistory(records.of(name), shared)));
  return json ? jsonText('history', { sensors }) : layOut(printHistoryList(sensors), output);
}

function sensorText(
  sensor: string,
  records: Records,
  json: true | undefined,
  output: Output,
): string {
  if (!records.names.includes(sensor)) {
    const nearest = nearestName(sensor, [...records.names]);
    throw new InputError('unknown-name', '--sensor', unknownSensorSentence(sensor, nearest));
  }
  const history = sensorHistory(records.of(sensor), scatterOf(records));
  return json ? jsonText('history', history) : layOut(printSensorHistory(history), output);
}

function scatterOf({ names, of }: Records): SharedScatter {
  function* all() {
    for (const name of names) yield of(name);
  }
  return sharedScatter(all());
}

function listed({ sensor, records, quantities }: SensorHistory): ListedSensor {
  const dated = records.filter(({ date }) => date !== undefined);
  const times = quantities.flatMap(({ points }) => points.map(({ at }) => at));
  const last = dated.at(-1) ?? records.at(-1)!;
  return {
    sensor,
    records: records.length,
    verdict: last.verdict,
    // Not as arguments of one call: a stack holds fewer.
    ...(times.length > 0 && {
      from: times.reduce((one, other) => Math.min(one, other)),
      to: times.reduce((one, other) => Math.max(one, other)),
    }),
    changed: quantities.filter(({ trend }) => trend?.changed).map(({ quantity }) => quantity),
  };
}
