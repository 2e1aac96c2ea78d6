import type { RefitAnswer, WayStep } from '@truesweep/wording';
import type { ComponentType } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { CheckSweep, HeldSweep } from '../checkSweep/CheckSweep.js';
import { namesOf } from '../forms/form.js';
import type { Refit } from './Refit.js';
import type { Way } from './way.js';
import { inWay, type WayStore } from './wayStore.js';

interface LastParts {
  readonly Check: ComponentType<Parameters<typeof CheckSweep>[0]>;
  readonly After: ComponentType<Parameters<typeof Refit>[0]>;
  readonly checkNames: readonly string[];
  readonly afterNames: readonly string[];
}

/** The steps that keep more than entries: the verdict, and the ticks after refitting. */
export function LastSteps(props: {
  readonly step: Extract<WayStep, 'verdict' | 'refit'>;
  readonly store: WayStore;
  readonly way: Way;
  readonly held: { current: HeldSweep };
  readonly onTick: (answer: RefitAnswer, isDone: boolean) => void;
}) {
  const { step, store, way, held, onTick } = props;
  const [parts, setParts] = useState<LastParts>();
  useEffect(() => {
    void load().then(setParts);
  }, []);
  const [checking, after] = useMemo(
    () =>
      parts
        ? [inWay(store, parts.checkNames), inWay(store, parts.afterNames)]
        : [undefined, undefined],
    [store, parts],
  );
  if (!parts || !checking || !after) return null;
  const { Check, After } = parts;
  return step === 'verdict' ? (
    <Check
      keeping={checking}
      held={held}
      {...(way.judged && { kept: way.judged })}
      onJudged={(judged) => store.change((before) => ({ ...before, judged }))}
    />
  ) : (
    <After keeping={after} done={way.done} onTick={onTick} />
  );
}

async function load(): Promise<LastParts> {
  const [{ CheckSweep: Check }, { jobForm }, { Refit: After }, { refitForm }] = await Promise.all([
    import('../checkSweep/CheckSweep.js'),
    import('../checkSweep/jobForm.js'),
    import('./Refit.js'),
    import('./refit.js'),
  ]);
  return { Check, After, checkNames: namesOf(jobForm), afterNames: namesOf(refitForm) };
}
