import { useEffect, useRef, useState } from 'preact/hooks';

/** A screen reader is told something new no oftener, ms. */
const soonest = 2000;

/** A text that changes often, as it is told to who listens: no oftener than it can be heard. */
export function useSpoken(text: string): string {
  const latest = useRef(text);
  latest.current = text;
  const [spoken, setSpoken] = useState('');
  useEffect(() => {
    const timer = setInterval(() => setSpoken(latest.current), soonest);
    return () => clearInterval(timer);
  }, []);
  return spoken;
}
