import { useEffect } from 'preact/hooks';

/** Lets keys reach what scrolls by itself in a place: lines and tables of workings that are wider than there is room for. */
export function useReachable(place: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    // Its height changes with whatever is unfolded or written in it.
    const observer = new ResizeObserver(() => {
      for (const line of element.querySelectorAll('.working-line, .working-table'))
        if (line.scrollWidth > line.clientWidth) line.setAttribute('tabindex', '0');
        else line.removeAttribute('tabindex');
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
}
