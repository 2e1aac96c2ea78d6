import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Entries, type Form, initialTexts, type NameIn, type Texts } from './form.js';
import type { Keeping } from './keeping.js';

/** Browsers refuse too many changes of an address in a short time, ms. */
const writeAfter = 250;

/** The answer waits for a short rest of the hand, so that no key waits for an answer, ms. */
const settleAfter = 120;

/** What stands in a form, kept and read back. */
export function useEntries<Given extends Entries>(form: Form<Given>, keeping: Keeping) {
  const initial = useMemo(() => initialTexts(form), [form]);
  const [texts, setTexts] = useState(initial);
  const [settled, setSettled] = useState(initial);
  const [notice, setNotice] = useState<string>();
  const isTouched = useRef(false);
  const changed = changesOf(initial, texts);

  useEffect(() => {
    const read = () => {
      const kept = keeping.read();
      if (!kept) return;
      setTexts({ ...initial, ...kept.texts });
      setSettled({ ...initial, ...kept.texts });
      setNotice(kept.notice);
    };
    read();
    return keeping.follow(read);
  }, [keeping, initial]);

  useEffect(() => {
    if (!isTouched.current) return;
    const timer = setTimeout(() => setSettled(texts), settleAfter);
    return () => clearTimeout(timer);
  }, [texts]);

  useEffect(() => {
    if (!isTouched.current) return;
    const write = () => keeping.write(changed);
    const timer = setTimeout(write, writeAfter);
    // Who leaves the page at once loses nothing.
    addEventListener('pagehide', write);
    return () => {
      clearTimeout(timer);
      removeEventListener('pagehide', write);
    };
  }, [keeping, texts]);

  return {
    texts,
    /** What the answer is for. */
    settled,
    notice,
    link: keeping.link?.(changed),
    setText: (name: NameIn<Given>, text: string) => {
      isTouched.current = true;
      setTexts((before) => ({ ...before, [name]: text }));
    },
    startAgain: () => {
      isTouched.current = true;
      setNotice(undefined);
      setTexts(initial);
    },
  };
}

function changesOf<Given extends Entries>(
  initial: Texts<Given>,
  texts: Texts<Given>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries<string>(texts).filter(([name, text]) => text !== initial[name as NameIn<Given>]),
  );
}
