import { type SharedScatter, sensorHistory, sharedScatter } from '@truesweep/history';
import { historyPageWords } from '@truesweep/wording';
import { writeShelf } from '../shelf/shelf.js';
import type { Answered, Asked, ReadSource } from './historyProtocol.js';
import { listedSensors } from './listedSensors.js';
import { readFile, readText } from './readSource.js';
import { putRecords, type RecordBook } from './recordBook.js';
import { sensorView } from './sensorView.js';

// Reads and works out away from the page, so that many records don't hold it up; they stay here.
let shelf: ReturnType<typeof readText> | undefined;
let files: Awaited<ReturnType<typeof readFile>>[] = [];
let book: RecordBook = new Map();
let shared: SharedScatter = {};

const answer = (answered: Answered): void => self.postMessage(answered);

function list(): void {
  answer({ kind: 'computing' });
  book = new Map();
  for (const { records } of [...(shelf ? [shelf] : []), ...files]) putRecords(book, records);
  const sensors = [...book.values()].map((records) => [...records.values()]);
  shared = sharedScatter(sensors);
  answer({
    kind: 'list',
    sensors: listedSensors(sensors, shared),
    ...(shelf && { shelf: shelf.source }),
    files: files.map(({ source }): ReadSource => source),
  });
}

async function act(asked: Asked): Promise<void> {
  if (asked.kind === 'choose') {
    const records = book.get(asked.sensor);
    if (!records) return;
    const view = sensorView(sensorHistory([...records.values()], shared));
    return answer({ kind: 'sensor', view });
  }
  if (asked.kind === 'shelf')
    shelf =
      asked.sensors.length === 0
        ? undefined
        : readText(writeShelf(asked.sensors), historyPageWords.theShelf);
  else if (asked.kind === 'forget') files = [];
  else for (const file of asked.files) files.push(await readFile(file));
  list();
}

// One after the other, as they were asked.
let last = Promise.resolve();
self.onmessage = ({ data }: MessageEvent<Asked>) => {
  last = last
    .then(() => act(data))
    .catch((error: unknown) => {
      // A rejected promise is no error of the worker to its page: it is thrown once more, outside.
      setTimeout(() => {
        throw error;
      });
    });
};
