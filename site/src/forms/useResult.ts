import { mendEntriesSentence, noAnswerSentence } from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { WorkingsOf } from '../workings/ShowWorking.js';
import type { ShownResult } from './Calculator.js';
import {
  type Entries,
  type Form,
  namesOf,
  type Refusals,
  readForm,
  type Texts,
  type Values,
} from './form.js';
import { answerTo } from './workElsewhere.js';

/** How a calculator comes to what it shows. */
export interface Showing<Given extends Entries> {
  /** Works it out at once; on a page only what is quick. */
  readonly show: (values: Values<Given>) => ShownResult;
  /** Has it worked out elsewhere, where it takes long. */
  readonly ask?: (values: Values<Given>) => Promise<ShownResult>;
  /** Fetches what writes the workings of it. */
  readonly workings?: () => Promise<WorkingsOf<Values<Given>>>;
  /** Whether something of what it shows answers to a hand, so that it is worked out before anything is typed. */
  readonly isPlayed?: true;
}

/**
 * What a calculator shows of the texts in its form.
 *
 * @param came Whether the page came with the result of the first texts; nothing is worked out while these stand there.
 * @returns No result while the first one is that of the page, or not there yet.
 */
export function useResult<Given extends Entries>(
  form: Form<Given>,
  texts: Texts<Given>,
  { show, ask, isPlayed }: Showing<Given>,
  came: boolean,
): {
  readonly result: ShownResult | undefined;
  readonly refusals: Refusals<Given>;
  /** What the texts say; nothing where one of them can't be read. */
  readonly values: Values<Given> | undefined;
  readonly isPending: boolean;
} {
  const read = useMemo(() => readForm(form, texts), [form, texts]);
  const refusals = 'refusals' in read ? read.refusals : undefined;
  // From the first change on, the first texts too have a result of their own.
  const first = useRef(texts);
  const isChanged = useRef(false);
  isChanged.current ||= texts !== first.current;
  const asksNow = isChanged.current || !came || isPlayed === true;

  const atOnce = useMemo(() => {
    if (refusals) {
      const wrong = namesOf(form).filter((name) => name in refusals);
      return { sentences: [mendEntriesSentence(wrong.map((name) => form.labels[name]))] };
    }
    // What builds the site waits for nobody.
    if (!('values' in read) || (typeof document !== 'undefined' && (ask || !asksNow))) return;
    const answered = answerTo(show, read.values);
    return 'answer' in answered ? answered.answer : noAnswer(answered.refused);
  }, [form, read, show, asksNow]);

  const [answered, setAnswered] = useState<{ to: typeof read; result: ShownResult }>();
  useEffect(() => {
    if (!ask || !asksNow || !('values' in read)) return;
    let isWanted = true;
    void ask(read.values)
      .catch(({ message }: Error) => noAnswer(message))
      .then((result) => {
        if (isWanted) setAnswered({ to: read, result });
      });
    return () => {
      isWanted = false;
    };
  }, [read, ask, asksNow]);

  return {
    result: atOnce ?? (ask ? answered?.result : undefined),
    refusals: refusals ?? none,
    values: 'values' in read ? read.values : undefined,
    isPending: Boolean(ask) && asksNow && !refusals && answered?.to !== read,
  };
}

const none = Object.freeze({});

function noAnswer(refused: string): ShownResult {
  return { sentences: [noAnswerSentence(refused)] };
}
