import { useEffect, useState } from 'preact/hooks';

/** No drawing is narrower or wider, px. */
const [narrowest, widest] = [260, 1400];

/** A width that a drawing can have, px. */
export function widthWithin(width: number): number {
  return Math.round(Math.min(widest, Math.max(narrowest, width)));
}

/** How wide a place is, px; undefined before it is known. */
export function usePlaceWidth(place: { readonly current: HTMLElement | null }): number | undefined {
  const [width, setWidth] = useState<number>();
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => setWidth(widthWithin(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return width;
}
