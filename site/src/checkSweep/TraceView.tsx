import { tracePlot } from '@truesweep/drawings';
import { traceWords } from '@truesweep/wording';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { TimeStretch, TraceWindow } from './protocol.js';
import { useDrawn } from './useDrawn.js';
import { type Gestures, useGestures } from './useGestures.js';
import { usePlaceWidth } from './usePlaceWidth.js';
import { moveView, type View, type ViewBounds, viewOf, zoomTime, zoomVolts } from './view.js';

/** One step closer shows this part of what is seen. */
const closer = 0.5;
/** One step aside moves by this part of it. */
const aside = 0.25;
/** A finding is shown with this many of its lengths around it. */
const around = 6;

/** A trace that is zoomed and moved in time and voltage by fingers, wheel, keys and buttons; or all its passes laid over one another. */
export function TraceView(props: {
  readonly bounds: ViewBounds;
  /** The recording's, for those who don't see it. */
  readonly name: string;
  readonly findings: readonly TimeStretch[];
  readonly draw: (window: TraceWindow) => Promise<string>;
  /** Draws the passes laid over one another; left out where there are none. */
  readonly drawPasses?: ((width: number) => Promise<string>) | undefined;
}) {
  const { bounds, findings, draw, drawPasses } = props;
  const [view, setView] = useState<View>({ stretch: bounds.whole });
  const [shown, setShown] = useState<number>();
  const [isOverlaid, setOverlaid] = useState(false);
  const place = useRef<HTMLElement>(null);
  const width = usePlaceWidth(place);
  const wanted = useMemo(
    () => (width === undefined ? undefined : { ...view, width, isOverlaid }),
    [view, width, isOverlaid],
  );
  const svg = useDrawn(wanted, ({ stretch, volts, width: wide, isOverlaid: overlaid }) =>
    overlaid && drawPasses
      ? drawPasses(wide)
      : draw({ stretch, width: wide, ...(volts && { volts }) }),
  );
  const change = (next: (before: View) => View) => {
    setOverlaid(false);
    setView(next);
  };
  const gestures: Gestures = {
    plot: () => tracePlot(width),
    zoom: (time, volts, part) =>
      change((before) =>
        zoomVolts(zoomTime(before, time, part.across, bounds), volts, part.up, bounds),
      ),
    move: (later, up) => change((before) => moveView(before, later, up, bounds)),
    fit: () => change(() => ({ stretch: bounds.whole })),
  };
  const pointers = useGestures(place, gestures);

  const show = (index: number) => {
    const finding = findings[index];
    if (!finding) return;
    setShown(index);
    change(() => viewOf(finding, around, bounds));
  };
  const step = (by: number) => {
    const count = findings.length;
    show(shown === undefined ? (by > 0 ? 0 : count - 1) : (shown + by + count) % count);
  };
  const zoom = (time: number, volts: number) =>
    gestures.zoom(time, volts, { across: 0.5, up: 0.5 });
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => gestures.move(-aside, 0),
    ArrowRight: () => gestures.move(aside, 0),
    ArrowUp: () => gestures.move(0, aside),
    ArrowDown: () => gestures.move(0, -aside),
    '+': () => zoom(closer, 1),
    '-': () => zoom(1 / closer, 1),
    '*': () => zoom(1, closer),
    '/': () => zoom(1, 1 / closer),
    Home: gestures.fit,
    n: () => step(1),
    p: () => step(-1),
  };
  const isClosest = view.stretch.end - view.stretch.start <= bounds.shortest * 1.001;
  const isWhole = view.stretch === bounds.whole && !view.volts;
  return (
    <div class="trace-view">
      <section
        ref={place}
        class={view.volts ? 'trace-place zoomed' : 'trace-place'}
        aria-label={traceWords.trace(props.name)}
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
        {findings.length > 0 && (
          <span class="together">
            <button type="button" onClick={() => step(-1)} aria-label={traceWords.previous}>
              <Arrow way="M11,3L5,9l6,6" />
            </button>
            <output aria-live="polite">
              {traceWords.findingOf(shown === undefined ? 0 : shown + 1, findings.length)}
            </output>
            <button type="button" onClick={() => step(1)} aria-label={traceWords.next}>
              <Arrow way="M7,3l6,6l-6,6" />
            </button>
          </span>
        )}
        <span class="together">
          <button
            type="button"
            disabled={isClosest}
            onClick={() => zoom(closer, 1)}
            aria-label={traceWords.closer}
          >
            + {traceWords.time}
          </button>
          <button type="button" onClick={() => zoom(1 / closer, 1)} aria-label={traceWords.farther}>
            − {traceWords.time}
          </button>
        </span>
        <span class="together">
          <button type="button" onClick={() => zoom(1, closer)} aria-label={traceWords.closerVolts}>
            + {traceWords.volts}
          </button>
          <button
            type="button"
            onClick={() => zoom(1, 1 / closer)}
            aria-label={traceWords.fartherVolts}
          >
            − {traceWords.volts}
          </button>
        </span>
        <button type="button" disabled={isWhole && !isOverlaid} onClick={gestures.fit}>
          {traceWords.whole}
        </button>
        {drawPasses && (
          <button
            type="button"
            aria-pressed={isOverlaid}
            onClick={() => setOverlaid((before) => !before)}
          >
            {traceWords.overlay}
          </button>
        )}
      </p>
      <p class="hint">{traceWords.how}</p>
    </div>
  );
}

/** A drawn arrow: not every font has one. */
function Arrow({ way }: { readonly way: string }) {
  return (
    <svg
      viewBox="0 0 18 18"
      width="18"
      height="18"
      fill="none"
      stroke="currentColor"
      aria-hidden="true"
    >
      <path d={way} stroke-width="2.5" />
    </svg>
  );
}
