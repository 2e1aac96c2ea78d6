import { watchWords } from '@truesweep/wording';
import { useEffect, useRef } from 'preact/hooks';
import { drawLiveTrace, type TraceLook } from './drawLiveTrace.js';
import type { TraceModel } from './traceModel.js';

/** Who wants no motion sees the trace step on so seldom, ms. */
const stepEvery = 500;

/** The last seconds of a running recording, drawn at the screen's rate. */
export function LiveTrace({ model }: { readonly model: TraceModel }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const place = canvas.current;
    const context = place?.getContext('2d', { alpha: false });
    if (!place || !context) return;
    const still = matchMedia('(prefers-reduced-motion: reduce)');
    let look = lookOf(place);
    let drawn = -1;
    let drawnAt = 0;
    let frame = 0;
    const draw = (at: number): void => {
      frame = requestAnimationFrame(draw);
      const { version } = model.now();
      if (version === drawn || (still.matches && at - drawnAt < stepEvery)) return;
      [drawn, drawnAt] = [version, at];
      drawLiveTrace(context, model, look);
    };
    const fit = (): void => {
      const { devicePixelRatio: fine } = window;
      look = lookOf(place);
      place.width = Math.round(look.width * fine);
      place.height = Math.round(look.height * fine);
      context.setTransform(fine, 0, 0, fine, 0, 0);
      drawn = -1;
    };
    const resized = new ResizeObserver(fit);
    resized.observe(place);
    // Light and dark.
    const themed = new MutationObserver(fit);
    themed.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    frame = requestAnimationFrame(draw);
    return () => {
      cancelAnimationFrame(frame);
      resized.disconnect();
      themed.disconnect();
    };
  }, [model]);
  return <canvas ref={canvas} class="live-trace" role="img" aria-label={watchWords.trace} />;
}

function lookOf(place: HTMLElement): TraceLook {
  const style = getComputedStyle(place);
  return {
    width: place.clientWidth,
    height: place.clientHeight,
    ink: style.color,
    accent: style.getPropertyValue('--sl-color-accent').trim(),
    paper: style.backgroundColor,
    font: `13px ${style.fontFamily}`,
  };
}
