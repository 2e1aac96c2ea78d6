import { useEffect, useRef, useState } from 'preact/hooks';

/** The drawing of what is wanted; while one is drawn, only the newest of those wanted meanwhile is remembered. */
export function useDrawn<Wanted>(
  wanted: Wanted | undefined,
  draw: (wanted: Wanted) => Promise<string>,
): string {
  const [svg, setSvg] = useState('');
  const newest = useRef(wanted);
  const isBusy = useRef(false);
  newest.current = wanted;
  useEffect(() => {
    const drawNewest = async () => {
      if (isBusy.current) return;
      isBusy.current = true;
      let drawn: Wanted | undefined;
      do {
        drawn = newest.current;
        if (drawn !== undefined) setSvg(await draw(drawn));
      } while (drawn !== newest.current);
      isBusy.current = false;
    };
    void drawNewest();
  }, [wanted]);
  return svg;
}
