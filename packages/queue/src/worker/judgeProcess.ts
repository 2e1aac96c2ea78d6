import { kindOfPlace, openStorage } from '../storage/storagePlace.js';
import { withoutSecrets } from '../withoutSecrets.js';
import { type JudgeStorages, judgeMessage } from './judgeMessage.js';
import type { JudgeSettings, TaskOutcome, ToProcess } from './judgeTask.js';

// What ends the worker is told to all of its processes; the worker decides when this one ends, and without it this one does.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => {});

let storages: JudgeStorages | undefined;

function opened(settings: JudgeSettings): JudgeStorages {
  const { recordings, results, largest } = settings;
  const open = (place: string, option: string) => openStorage(place, option, settings, process.env);
  const known = recordings.map((place) => [kindOfPlace(place), open(place, '--recordings')]);
  return { ...Object.fromEntries(known), results: open(results, '--results'), largest };
}

const say = (outcome: TaskOutcome) =>
  process.send?.(
    'reason' in outcome
      ? { ...outcome, reason: withoutSecrets(outcome.reason, process.env) }
      : outcome,
  );

process.on('message', (told: ToProcess) => {
  if (told.kind === 'open') {
    storages = opened(told.settings);
    return;
  }
  judgeMessage(told.task, storages!).then(say, (error: unknown) => {
    say({ kind: 'poison', reason: String((error instanceof Error && error.stack) || error) });
  });
});
