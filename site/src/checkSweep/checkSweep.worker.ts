import { InputError } from '@truesweep/core';
import { checkSweepWords, refusalSentence } from '@truesweep/wording';
import { type JudgedFiles, judgeFiles } from './judgeFiles.js';
import type { Answered, Asked, WatchAskedFor } from './protocol.js';
import { drawTrace } from './trace.js';

// Reads, judges and draws away from the page, so that a long recording doesn't hold it up; its samples stay here.
let judged: Extract<JudgedFiles, { kind: 'judged' }> | undefined;

const answer = (answered: Answered): void => self.postMessage(answered);

// Held as long as the worker lives: its page waits for it, and so learns of an end that nobody tells.
if ('locks' in navigator) {
  const lock = `truesweep-${Math.random()}`;
  void navigator.locks.request(lock, () => {
    answer({ kind: 'alive', lock });
    return new Promise(() => {});
  });
}

/** The bytes of chosen files; what can no longer be read is refused. */
async function bytesOf(files: readonly File[]) {
  return await Promise.all(
    files.map(async (file) => ({
      name: file.name,
      bytes: new Uint8Array(await file.arrayBuffer().catch(() => refuseLost(file.name))),
    })),
  );
}

async function judge(asked: Extract<Asked, { files: readonly File[] }>): Promise<void> {
  const files = await bytesOf(asked.files);
  const now = new Date().toISOString();
  const result =
    asked.kind === 'judge'
      ? await judgeFiles(files, asked.given, now, (progress) =>
          answer({ kind: 'progress', progress }),
        )
      : (await import('./openReport.js')).openReport(files);
  if (result.kind === 'opened') return answer(result);
  judged = result;
  answer({ kind: 'judged', judged: result.judged, job: result.job });
}

function refuseLost(name: string): never {
  throw new InputError('unreadable-file', name, checkSweepWords.unreadable);
}

self.onmessage = async ({ data }: MessageEvent<Asked | WatchAskedFor>) => {
  try {
    if (data.kind === 'watch') return (await import('../watchSweep/watch.js')).watch(data.port);
    if (data.kind === 'judge-so-far')
      return (await import('../watchSweep/judgeSoFar.js')).judgeSoFar(data.port);
    if (data.kind === 'look') {
      const { lookAt } = await import('./lookAt.js');
      const looks = [];
      for (const [i, file] of data.files.entries()) {
        const [given] = await bytesOf([file]);
        if (given) looks.push(lookAt(given, data.read, `look-${i + 1}`, data.width));
      }
      return answer({ kind: 'looked', looks });
    }
    if (data.kind === 'judge' || data.kind === 'open-report') return await judge(data);
    if (!judged) return;
    if (data.kind === 'report')
      return answer({
        kind: 'made',
        id: data.id,
        text: await judged.report(data.record, data.working),
      });
    if (data.kind === 'working')
      return answer({ kind: 'made', id: data.id, text: await judged.working(data.recording) });
    if (data.kind === 'evidence')
      return answer({
        kind: 'made',
        id: data.id,
        text: await judged.evidence(data.recording, data.width),
      });
    const trace = judged.traces[data.recording];
    if (!trace) return;
    const name = `${data.kind}-${data.recording + 1}`;
    const text =
      data.kind === 'trace'
        ? drawTrace(trace, name, data.window)
        : (await import('./drawPasses.js')).drawPasses(trace, name, data.width);
    answer({ kind: 'made', id: data.id, text });
  } catch (error) {
    if (!(error instanceof InputError)) {
      // A rejected promise is no error of the worker to its page: it is thrown once more, outside.
      setTimeout(() => {
        throw error;
      });
      return;
    }
    const { path, place, message, code } = error;
    answer({ kind: 'refused', refusal: refusalSentence({ path, place, sentence: message, code }) });
  }
};
