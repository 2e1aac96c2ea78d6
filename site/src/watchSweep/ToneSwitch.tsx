import { watchWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { type ReadingTone, readingTone } from './readingTone.js';
import type { TraceModel } from './traceModel.js';
import type { useWatched } from './useWatched.js';

/** Switches the tone that follows the reading, and sets how loud it is. It is off until it is asked for, and ends with the recording. */
export function ToneSwitch(props: {
  readonly hearer: ReturnType<typeof useWatched>['hearer'];
  readonly model: TraceModel;
}) {
  const { hearer, model } = props;
  const [volume, setVolume] = useState(0.4);
  const [tone, setTone] = useState<ReadingTone>();
  useEffect(() => {
    if (!tone) return;
    hearer.current = {
      onVolts: (volts) => {
        const { closed = 0, open = 1 } = model.now();
        tone.follow((volts - closed) / (open - closed || 1));
      },
      onFinding: tone.click,
    };
    return () => {
      hearer.current = undefined;
      tone.end();
    };
  }, [tone]);
  return (
    <span class="tone">
      <label class="tick">
        <input
          type="checkbox"
          aria-describedby="tone-hint"
          onChange={(event) =>
            setTone(event.currentTarget.checked ? readingTone(volume) : undefined)
          }
        />{' '}
        {watchWords.tone}
      </label>
      <label>
        {watchWords.volume}{' '}
        <input
          type="range"
          min="0"
          max="1"
          step="0.05"
          value={volume}
          onInput={(event) => {
            setVolume(Number(event.currentTarget.value));
            tone?.setVolume(Number(event.currentTarget.value));
          }}
        />
      </label>
      <span class="hint" id="tone-hint">
        {watchWords.toneHint}
      </span>
    </span>
  );
}
