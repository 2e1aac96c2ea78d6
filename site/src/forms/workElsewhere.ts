import { InputError } from '@truesweep/core';

/** A question to a worker, and its answer; an answer that an input error stood in the way of has its sentence. */
type Answered<Answer> = { readonly answer: Answer } | { readonly refused: string };

/**
 * Has what takes long worked out in a worker of its own, so that no key waits for it. The worker is the very module that calls
 * this: it fetches nothing that the page doesn't have. Of what is asked while it is at work only the last is worked out. Where no
 * worker starts, the page works it out itself.
 *
 * @param name By which the worker knows what to do, since a built file may hold several such modules.
 * @returns What is asked with values; it fails with the sentence of an input error only.
 * @param module The calling module's `import.meta.url`.
 */
export function workElsewhere<Values, Answer>(
  name: string,
  module: string,
  work: (values: Values) => Answer,
): (values: Values) => Promise<Answer> {
  // No page, and not what builds the site: the worker itself.
  if (typeof document === 'undefined' && globalThis.self?.name === name)
    addEventListener('message', ({ data }) => postMessage(answerTo(work, data)));
  type Question = { values: Values; done: (answered: Answered<Answer>) => void };
  let worker: Worker | undefined;
  let asked: Question | undefined;
  let next: Question | undefined;
  const go = (answered?: Answered<Answer>) => {
    if (answered) asked?.done(answered);
    else if (asked) return;
    asked = next;
    next = undefined;
    if (asked && worker) worker.postMessage(asked.values);
    else if (asked) go(answerTo(work, asked.values));
  };
  return async (values) => {
    const answered = await new Promise<Answered<Answer>>((done) => {
      next = { values, done };
      if (!worker) {
        worker = new Worker(module, { type: 'module', name });
        worker.onmessage = ({ data }: MessageEvent<Answered<Answer>>) => go(data);
        worker.onerror = () => {
          worker = undefined;
          if (asked) go(answerTo(work, asked.values));
        };
      }
      go();
    });
    if ('refused' in answered) throw new Error(answered.refused);
    return answered.answer;
  };
}

/** Works something out at once; an input error becomes its sentence. */
export function answerTo<Values, Answer>(
  work: (values: Values) => Answer,
  values: Values,
): Answered<Answer> {
  try {
    return { answer: work(values) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { refused: error.message };
  }
}
