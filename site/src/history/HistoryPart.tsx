import { isInputError } from '@truesweep/core';
import { type ReadRecords, readRecords } from '@truesweep/history';
import {
  changedSensorsSentence,
  damagedEntrySentence,
  historyPageWords,
  historyQuantityNames,
  historyWords,
  moreDamagedSentence,
  readRecordsSentence,
  verdictLabels,
} from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import { writeShelf } from '../shelf/shelf.js';
import { readAll } from '../shelf/shelfStore.js';
import { exampleRecords } from './exampleRecords.js';
import { type Gathered, gatherRecords } from './gatherRecords.js';
import { type ListedHistory, listHistories, listInSlices } from './listHistories.js';
import { SensorPart } from './SensorPart.js';

const example = gatherRecords(new Map(), exampleRecords);
const exampleShown = { gathered: example, ...listHistories(example) };
/** So many of a file's entries that are no results are told of one by one, and so many sensors listed. */
const [mostTold, mostListed] = [5, 200];

/** What changed of the sensors of the shelf and of files of results that are opened; an invented season until there are some. */
export function HistoryPart() {
  const [gathered, setGathered] = useState<Gathered>();
  /** What stands on the page: of the records before until those that were read last are worked out. */
  const [shown, setShown] = useState(exampleShown);
  const [chosen, setChosen] = useState<string>();
  const [said, setSaid] = useState<readonly string[]>([]);
  const [isBusy, setBusy] = useState(false);

  const take = ({ records, notJudged, damaged }: ReadRecords, name: string) => {
    if (records.length > 0) setGathered((before) => gatherRecords(before ?? new Map(), records));
    const told = damaged
      .slice(0, mostTold)
      .map(({ place, sentence }) => damagedEntrySentence(name, place, sentence));
    const more = damaged.length - told.length;
    setSaid((before) => [
      ...before,
      readRecordsSentence(name, records.length, notJudged),
      ...told,
      ...(more > 0 ? [moreDamagedSentence(more)] : []),
    ]);
  };
  useEffect(() => {
    void readAll().then((tried) => {
      if (!('value' in tried) || tried.value.sensors.length === 0) return;
      const read = readRecords(writeShelf(tried.value.sensors), historyPageWords.shelf);
      if (read.records.length > 0) take(read, historyPageWords.shelf);
    });
  }, []);
  useEffect(() => {
    if (!gathered) return;
    const stop = new AbortController();
    setBusy(true);
    void listInSlices(gathered, stop.signal).then((done) => {
      if (!done) return;
      setShown({ gathered, ...done });
      setBusy(false);
    });
    return () => stop.abort();
  }, [gathered]);

  const open = async (files: FileList | null) => {
    setSaid([]);
    for (const file of files ?? []) {
      try {
        take(readRecords(await file.text(), file.name), file.name);
      } catch (error) {
        if (!isInputError(error)) throw error;
        setSaid((before) => [...before, `${file.name}: ${error.message}`]);
      }
    }
  };
  const { rows, shared } = shown;
  const name = rows.some(({ sensor }) => sensor === chosen) ? chosen : rows[0]?.sensor;
  const records = name === undefined ? undefined : shown.gathered.get(name);
  const changed = rows.filter((row) => row.changed.length > 0).length;
  return (
    <div class="readings shelf history not-content">
      <p class="keep">
        <label class="file">
          {historyPageWords.open}{' '}
          <input
            type="file"
            accept=".jsonl,.json,.txt"
            multiple
            onChange={async (event) => await open(event.currentTarget.files)}
          />
        </label>
      </p>
      <div role="status">
        {said.map((sentence) => (
          <p key={sentence} class="notice">
            {sentence}
          </p>
        ))}
        {isBusy && <p class="notice">{historyPageWords.busy}</p>}
      </div>
      {shown.gathered === example && <p class="answer">{historyPageWords.example}</p>}
      <Sensors rows={rows.slice(0, mostListed)} chosen={name} onChoose={setChosen} />
      {rows.length > mostListed && <p>{historyPageWords.moreListed}</p>}
      <p>{changedSensorsSentence(rows.length, changed)}</p>
      {records && <SensorPart records={[...records.values()]} shared={shared} />}
      <p>{historyWords.howTold}</p>
      <p>{historyWords.noVerdict}</p>
    </div>
  );
}

function Sensors(props: {
  readonly rows: readonly ListedHistory[];
  readonly chosen: string | undefined;
  readonly onChoose: (sensor: string) => void;
}) {
  return (
    <table class="lists">
      <caption>{historyPageWords.sensors}</caption>
      <thead>
        <tr>
          {(['sensor', 'records', 'from', 'to', 'verdict', 'changes'] as const).map((one) => (
            <th key={one} scope="col">
              {historyWords[one]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {props.rows.map(({ sensor, records, from, to, verdict, changed }) => (
          <tr key={sensor}>
            <th scope="row">
              <button
                type="button"
                aria-pressed={sensor === props.chosen}
                onClick={() => props.onChoose(sensor)}
              >
                {sensor}
              </button>
            </th>
            <td data-label={historyWords.records}>{records}</td>
            <td data-label={historyWords.from}>{from ?? historyWords.noDate}</td>
            <td data-label={historyWords.to}>{to ?? '–'}</td>
            <td data-label={historyWords.verdict} class={`verdict-line ${verdict}`}>
              <VerdictSign verdict={verdict} /> {verdictLabels[verdict]}
            </td>
            <td data-label={historyWords.changes}>
              {changed.map((one) => historyQuantityNames[one]).join(', ') || historyWords.none}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
