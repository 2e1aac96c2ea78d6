import type { Seconds } from '@truesweep/core';
import { tracePart } from '@truesweep/drawings';
import { traceWords } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { TimeStretch } from './protocol.js';

/** One step closer shows this part of the stretch. */
const closer = 0.5;
/** One step aside moves by this part of it. */
const aside = 0.25;
/** Findings that have a button; the others are found by zooming. */
const mostButtons = 12;
/** A finding is shown with this many of its lengths around it. */
const around = 6;

/** A trace that is zoomed and moved by keys, buttons, wheel and fingers; each stretch is drawn by `draw`. */
export function TraceView(props: {
  readonly whole: TimeStretch;
  readonly shortest: Seconds;
  readonly findings: readonly TimeStretch[];
  readonly draw: (stretch: TimeStretch) => Promise<string>;
}) {
  const { whole, shortest, findings, draw } = props;
  const [stretch, setStretch] = useState(whole);
  const svg = useDrawn(stretch, draw);
  const place = useRef<HTMLElement>(null);
  const length = stretch.end - stretch.start;

  /** The stretch of this length with `fixed` at the same part of it as before. */
  const zoomed = (before: TimeStretch, factor: number, part: number): TimeStretch => {
    const now = before.end - before.start;
    const wanted = Math.min(whole.end - whole.start, Math.max(shortest, now * factor));
    const fixed = before.start + now * part;
    return held({ start: fixed - wanted * part, end: fixed + wanted * (1 - part) }, whole);
  };
  const zoom = (factor: number, part = 0.5) => setStretch((before) => zoomed(before, factor, part));
  const move = (part: number) =>
    setStretch((before) => shifted(before, (before.end - before.start) * part, whole));
  const showAll = () => setStretch(whole);
  const show = ({ start, end }: TimeStretch) => {
    const wanted = Math.max(shortest, (end - start) * around, (whole.end - whole.start) / 200);
    const middle = (start + end) / 2;
    setStretch(held({ start: middle - wanted / 2, end: middle + wanted / 2 }, whole));
  };
  useWheel(place, zoom);
  const pointers = usePointers(
    place,
    setStretch,
    (before, by) => shifted(before, by, whole),
    zoomed,
  );

  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => move(-aside),
    ArrowRight: () => move(aside),
    '+': () => zoom(closer),
    '-': () => zoom(1 / closer),
    Home: showAll,
  };
  const { earlier, later, farther } = traceWords;
  return (
    <div class="trace-view">
      <section
        ref={place}
        class="trace-place"
        aria-label={traceWords.trace}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys work where the focus is
        tabIndex={0}
        onKeyDown={(event) => {
          const act = keys[event.key];
          if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
          event.preventDefault();
          act();
        }}
        {...pointers}
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      <p class="trace-buttons">
        <button type="button" disabled={length <= shortest} onClick={() => zoom(closer)}>
          {traceWords.closer}
        </button>
        <button type="button" onClick={() => zoom(1 / closer)}>
          {farther}
        </button>
        <button type="button" onClick={() => move(-aside)}>
          {earlier}
        </button>
        <button type="button" onClick={() => move(aside)}>
          {later}
        </button>
        <button type="button" onClick={showAll}>
          {traceWords.whole}
        </button>
        {findings.slice(0, mostButtons).map((finding, i) => (
          <button key={`${finding.start}`} type="button" onClick={() => show(finding)}>
            {traceWords.finding(i + 1)}
          </button>
        ))}
      </p>
    </div>
  );
}

/** A stretch moved back into the whole. */
function held({ start, end }: TimeStretch, whole: TimeStretch): TimeStretch {
  const by = Math.max(0, whole.start - start) - Math.max(0, end - whole.end);
  return {
    start: Math.max(whole.start, start + by),
    end: Math.min(whole.end, end + by),
  };
}

function shifted({ start, end }: TimeStretch, by: Seconds, whole: TimeStretch): TimeStretch {
  const most = Math.min(Math.max(by, whole.start - start), whole.end - end);
  return { start: start + most, end: end + most };
}

/** The drawing of a stretch; while one is drawn, only the newest of those wanted meanwhile is remembered. */
function useDrawn(stretch: TimeStretch, draw: (stretch: TimeStretch) => Promise<string>): string {
  const [svg, setSvg] = useState('');
  const wanted = useRef(stretch);
  const isBusy = useRef(false);
  wanted.current = stretch;
  useEffect(() => {
    const drawNewest = async () => {
      if (isBusy.current) return;
      isBusy.current = true;
      let drawn: TimeStretch;
      do {
        drawn = wanted.current;
        setSvg(await draw(drawn));
      } while (drawn !== wanted.current);
      isBusy.current = false;
    };
    void drawNewest();
  }, [stretch, draw]);
  return svg;
}

type Place = { readonly current: HTMLElement | null };

/** Where in the stretch a place on the screen lies. */
function partAt(place: Place, clientX: number): number {
  const box = place.current?.getBoundingClientRect();
  return box ? Math.min(1, Math.max(0, tracePart((clientX - box.left) / box.width))) : 0.5;
}

/** The wheel zooms about the pointer while a key says that it is meant; else it moves the page as ever. */
function useWheel(place: Place, zoom: (factor: number, part: number) => void): void {
  const latest = useRef(zoom);
  latest.current = zoom;
  useEffect(() => {
    const element = place.current;
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.shiftKey) return;
      event.preventDefault();
      const turned = event.deltaY || event.deltaX;
      latest.current(1.0015 ** turned, partAt(place, event.clientX));
    };
    // Not passive: the page must not zoom too.
    element?.addEventListener('wheel', turn, { passive: false });
    return () => element?.removeEventListener('wheel', turn);
  }, [place]);
}

/** One finger or the mouse moves the trace, two fingers zoom it. */
function usePointers(
  place: Place,
  setStretch: (change: (before: TimeStretch) => TimeStretch) => void,
  moved: (before: TimeStretch, by: Seconds) => TimeStretch,
  zoomed: (before: TimeStretch, factor: number, part: number) => TimeStretch,
) {
  const down = useRef(new Map<number, number>());
  const release = (event: PointerEvent) => down.current.delete(event.pointerId);
  return {
    onPointerDown: (event: PointerEvent) => {
      place.current?.setPointerCapture(event.pointerId);
      down.current.set(event.pointerId, event.clientX);
    },
    onPointerMove: (event: PointerEvent) => {
      const before = down.current.get(event.pointerId);
      if (before === undefined || before === event.clientX) return;
      const other = [...down.current].find(([id]) => id !== event.pointerId)?.[1];
      down.current.set(event.pointerId, event.clientX);
      if (other === undefined) {
        const part = partAt(place, before) - partAt(place, event.clientX);
        setStretch((stretch) => moved(stretch, part * (stretch.end - stretch.start)));
      } else {
        const factor = Math.abs(before - other) / Math.max(1, Math.abs(event.clientX - other));
        setStretch((stretch) => zoomed(stretch, factor, partAt(place, other)));
      }
    },
    onPointerUp: release,
    onPointerCancel: release,
  };
}
