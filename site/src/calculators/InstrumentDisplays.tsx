import type { Seconds } from '@truesweep/core';
import { displayWords } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import { quantityText } from '../forms/quantityText.js';
import type { Displays } from './displays.js';

/** Digits, a needle and a trace side by side over one stroke, moved by hand or played; nothing moves by itself. */
export function InstrumentDisplays({ displays }: { readonly displays: Displays }) {
  const { seconds, digits, needle, trace } = displays;
  const [at, setAt] = useState(seconds);
  const [isPlaying, setPlaying] = useState(false);
  useEffect(() => setAt(seconds), [seconds]);
  usePlayed(isPlaying, seconds, (moment) => {
    setAt(moment);
    if (moment >= seconds) setPlaying(false);
  });
  const shown = digits.shown.filter(({ time }) => time <= at).at(-1)?.text ?? '';
  const deflection = valueAt(needle, at);
  return (
    <section class="displays" aria-label={displayWords.title}>
      <h2>{displayWords.title}</h2>
      <div class="beside">
        <figure>
          <p class="meter-digits">{shown || displayWords.blank} V</p>
          <figcaption>{digits.name}</figcaption>
        </figure>
        <figure>
          <Needle part={deflection / needle.range} range={needle.range} />
          <figcaption>{needle.name}</figcaption>
        </figure>
        <figure>
          <Trace trace={trace} seconds={seconds} at={at} />
          <figcaption>{trace.name}</figcaption>
        </figure>
      </div>
      <p class="keep">
        <label>
          {displayWords.moment}{' '}
          <input
            type="range"
            min={0}
            max={seconds}
            step={0.01}
            value={at}
            aria-valuetext={quantityText(at, 's')}
            onInput={(event) => {
              setPlaying(false);
              setAt(event.currentTarget.valueAsNumber);
            }}
          />
        </label>
        <button type="button" class="play" onClick={() => setPlaying(true)}>
          {displayWords.play}
        </button>
      </p>
    </section>
  );
}

/** Counts the moments of a stroke as they pass. */
function usePlayed(isPlaying: boolean, seconds: Seconds, onMoment: (at: Seconds) => void): void {
  const latest = useRef(onMoment);
  latest.current = onMoment;
  useEffect(() => {
    if (!isPlaying) return;
    let frame = 0;
    let begun: number | undefined;
    const next = (now: number) => {
      begun ??= now;
      const at = Math.min(seconds, (now - begun) / 1000);
      latest.current(at);
      if (at < seconds) frame = requestAnimationFrame(next);
    };
    frame = requestAnimationFrame(next);
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, seconds]);
}

type Readings = { readonly time: Float64Array; readonly volts: Float64Array };

/** What stood there last at a moment. */
function valueAt({ time, volts }: Readings, at: Seconds): number {
  let [low, high] = [0, time.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((time[middle] ?? 0) <= at) low = middle + 1;
    else high = middle;
  }
  return volts[Math.max(0, low - 1)] ?? 0;
}

/** The needle swings from −45° to 45°. */
const swing = 90;

function Needle({ part, range }: { readonly part: number; readonly range: number }) {
  const tick = (of: number) => {
    const angle = ((of - 0.5) * swing * Math.PI) / 180;
    const [across, up] = [Math.sin(angle), Math.cos(angle)];
    return { of, across, up };
  };
  const ticks = [0, 0.25, 0.5, 0.75, 1].map(tick);
  const { across, up } = tick(part);
  return (
    <svg
      viewBox="0 0 200 130"
      class="drawing"
      role="img"
      aria-label={quantityText(part * range, 'V')}
    >
      {ticks.map(({ of, across, up }) => (
        <g key={of}>
          <path
            d={`M${100 + across * 92},${120 - up * 92}L${100 + across * 100},${120 - up * 100}`}
            stroke="currentColor"
          />
          <text
            x={100 + across * 80}
            y={124 - up * 80}
            font-size="11"
            text-anchor="middle"
            fill="currentColor"
          >
            {of * range}
          </text>
        </g>
      ))}
      <path
        class="needle"
        d={`M100,120L${(100 + across * 90).toFixed(2)},${(120 - up * 90).toFixed(2)}`}
        stroke="currentColor"
        stroke-width="2"
      />
    </svg>
  );
}

/** A trace is drawn in so many columns. */
const columns = 200;

function Trace(props: {
  readonly trace: Displays['trace'];
  readonly seconds: Seconds;
  readonly at: Seconds;
}) {
  const { trace, seconds, at } = props;
  return (
    <svg
      viewBox={`0 0 ${columns} 130`}
      class="drawing"
      role="img"
      aria-label={quantityText(valueAt(trace, at), 'V')}
    >
      <path d={`M0,5V125H${columns}`} stroke="currentColor" stroke-width="0.8" fill="none" />
      <path class="trace" d={pathTo(trace, seconds, at)} stroke="currentColor" fill="none" />
    </svg>
  );
}

/** Lowest and highest reading of each column up to a moment, so that the dropout shows however short. */
function pathTo({ time, volts, range }: Displays['trace'], seconds: Seconds, at: Seconds): string {
  const y = (value: number) => (125 - (value / range) * 120).toFixed(1);
  let path = '';
  let from = 0;
  for (let column = 0; column < columns; column++) {
    const end = ((column + 1) / columns) * seconds;
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    while (from < time.length && (time[from] ?? 0) < end && (time[from] ?? 0) <= at) {
      const value = volts[from] ?? 0;
      low = Math.min(low, value);
      high = Math.max(high, value);
      from++;
    }
    if (low > high) continue;
    path += `${path ? 'L' : 'M'}${column + 0.5},${y(low)}L${column + 0.5},${y(high)}`;
  }
  return path;
}
