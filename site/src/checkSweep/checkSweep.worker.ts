import { InputError } from '@truesweep/core';
import { refusalSentence } from '@truesweep/wording';
import { judgeFiles } from './judgeFiles.js';
import type { Answered, Asked } from './protocol.js';
import { drawTrace, type Trace } from './trace.js';

// Reads, judges and draws away from the page, so that a long recording doesn't hold it up; its samples stay here.
let traces: readonly Trace[] = [];

const answer = (answered: Answered): void => self.postMessage(answered);

async function judge({ files, given }: Extract<Asked, { kind: 'judge' }>): Promise<void> {
  const named = await Promise.all(
    files.map(async (file) => ({
      name: file.name,
      bytes: new Uint8Array(await file.arrayBuffer()),
    })),
  );
  const result = await judgeFiles(named, given, new Date().toISOString(), (progress) =>
    answer({ kind: 'progress', progress }),
  );
  if (result.kind === 'opened') return answer(result);
  traces = result.traces;
  answer({ kind: 'judged', judged: result.judged, job: result.job });
}

self.onmessage = async ({ data }: MessageEvent<Asked>) => {
  try {
    if (data.kind === 'judge') return await judge(data);
    const trace = traces[data.recording];
    if (!trace) return;
    const svg = drawTrace(trace, `trace-${data.recording + 1}`, data.stretch);
    answer({ kind: 'trace', id: data.id, svg });
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
