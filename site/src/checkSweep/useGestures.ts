import type { TracePlot } from '@truesweep/drawings';
import { useEffect, useRef } from 'preact/hooks';

/** A place in a plot, each 0 to 1: from its left edge, and from its foot. */
export interface PlotPart {
  readonly across: number;
  readonly up: number;
}

/** What fingers and wheel do to a trace. */
export interface Gestures {
  /** Where the axes stand in the drawing. */
  readonly plot: () => TracePlot;
  /** Zooms time and readings by factors, below 1 closer, about a place. */
  readonly zoom: (time: number, volts: number, about: PlotPart) => void;
  /** Moves by parts of what is seen. */
  readonly move: (later: number, up: number) => void;
  /** Shows all of it. */
  readonly fit: () => void;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Two taps within this time are one double tap, ms, when they lie this near, px. */
const doubleTap = { within: 350, near: 30 } as const;
/** Two fingers nearer than this in one direction don't zoom in it, px. */
const nearest = 40;

/** One finger or the mouse moves, two fingers zoom in both directions, the wheel zooms time, with Shift readings; a double tap shows all. */
export function useGestures(
  place: { readonly current: HTMLElement | null },
  gestures: Gestures,
): object {
  const latest = useRef(gestures);
  latest.current = gestures;
  const down = useRef(new Map<number, Point>());
  const tapped = useRef<Point & { readonly at: number }>();
  /** Where the finger that is down came down. */
  const began = useRef<Point>();

  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const turn = (event: WheelEvent) => {
      // It moves the page as ever until the trace was touched, or a key says that it is meant.
      const isMeant = event.ctrlKey || event.shiftKey || document.activeElement === element;
      if (!isMeant) return;
      event.preventDefault();
      const factor = 1.0015 ** (event.deltaY || event.deltaX);
      const about = partAt(element, latest.current.plot(), { x: event.clientX, y: event.clientY });
      if (event.shiftKey) latest.current.zoom(1, factor, about);
      else latest.current.zoom(factor, 1, about);
    };
    // Not passive: the page must not move or zoom too.
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [place]);

  const release = (event: PointerEvent) => {
    const at = { x: event.clientX, y: event.clientY };
    const start = began.current;
    down.current.delete(event.pointerId);
    const isTap = event.type === 'pointerup' && start !== undefined && distance(start, at) < 8;
    if (!isTap) {
      tapped.current = undefined;
      return;
    }
    const before = tapped.current;
    const isDouble =
      before !== undefined &&
      event.timeStamp - before.at < doubleTap.within &&
      distance(before, at) < doubleTap.near;
    tapped.current = isDouble ? undefined : { ...at, at: event.timeStamp };
    if (isDouble) latest.current.fit();
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      place.current?.setPointerCapture(event.pointerId);
      began.current = { x: event.clientX, y: event.clientY };
      down.current.set(event.pointerId, began.current);
    },
    onPointerMove: (event: PointerEvent) => {
      const before = down.current.get(event.pointerId);
      const element = place.current;
      if (before === undefined || !element) return;
      const now = { x: event.clientX, y: event.clientY };
      if (now.x === before.x && now.y === before.y) return;
      const other = [...down.current].find(([id]) => id !== event.pointerId)?.[1];
      down.current.set(event.pointerId, now);
      const { plot, move, zoom } = latest.current;
      const drawn = plot();
      const scale = element.clientWidth / drawn.width;
      if (other === undefined) {
        move(
          (before.x - now.x) / ((drawn.right - drawn.left) * scale),
          (now.y - before.y) / ((drawn.bottom - drawn.top) * scale),
        );
        return;
      }
      const factor = (along: 'x' | 'y') => {
        const [was, is] = [
          Math.abs(before[along] - other[along]),
          Math.abs(now[along] - other[along]),
        ];
        return was < nearest || is < nearest ? 1 : was / is;
      };
      zoom(factor('x'), factor('y'), partAt(element, drawn, other));
    },
    onPointerUp: release,
    onPointerCancel: release,
  };
}

function distance(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

/** Where in the plot a place on the screen lies. */
function partAt(element: HTMLElement, plot: TracePlot, { x, y }: Point): PlotPart {
  const box = element.getBoundingClientRect();
  const scale = box.width / plot.width;
  const held = (part: number) => Math.min(1, Math.max(0, part));
  return {
    across: held(((x - box.left) / scale - plot.left) / (plot.right - plot.left)),
    up: held((plot.bottom - (y - box.top) / scale) / (plot.bottom - plot.top)),
  };
}
