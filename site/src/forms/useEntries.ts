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
  /** What was typed last: the state follows it a moment later. */
  const typed = useRef(initial);
  const unwritten = useRef(false);

  const write = () => {
    if (!unwritten.current) return;
    unwritten.current = false;
    keeping.write(changed(initial, typed.current));
  };
  const type = (next: Texts<Given>) => {
    typed.current = next;
    unwritten.current = true;
    setTexts(next);
  };

  useEffect(() => {
    const read = () => {
      const kept = keeping.read();
      // What was typed since is newer than what is kept.
      if (!kept || unwritten.current) return;
      const next: Texts<Given> = { ...initial, ...kept.texts };
      if (isSame(next, typed.current)) return setNotice(kept.notice);
      typed.current = next;
      setTexts(next);
      setSettled(next);
      setNotice(kept.notice);
    };
    read();
    return keeping.follow(read);
  }, [keeping, initial]);

  useEffect(() => {
    const settling = setTimeout(() => setSettled(texts), settleAfter);
    const writing = setTimeout(write, writeAfter);
    return () => {
      clearTimeout(settling);
      clearTimeout(writing);
    };
  }, [keeping, texts]);

  useEffect(() => {
    // Who leaves the page, or the step, at once loses nothing.
    addEventListener('pagehide', write);
    return () => {
      removeEventListener('pagehide', write);
      write();
    };
  }, [keeping]);

  return {
    texts,
    /** What the answer is for. */
    settled,
    notice,
    link: keeping.link?.(changed(initial, texts)),
    setText: (name: NameIn<Given>, text: string) => type({ ...typed.current, [name]: text }),
    /** Takes those of these texts that the form has; returns what stands then. */
    take: (given: Readonly<Record<string, string>>) => {
      const known = Object.entries(given).filter(([name]) => Object.hasOwn(initial, name));
      const taken = { ...typed.current, ...Object.fromEntries(known) };
      type(taken);
      return taken;
    },
    startAgain: () => {
      setNotice(undefined);
      type(initial);
    },
  };
}

function isSame<Given extends Entries>(one: Texts<Given>, other: Texts<Given>): boolean {
  return Object.entries(one).every(([name, text]) => other[name as NameIn<Given>] === text);
}

function changed<Given extends Entries>(
  initial: Texts<Given>,
  texts: Texts<Given>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries<string>(texts).filter(([name, text]) => text !== initial[name as NameIn<Given>]),
  );
}
