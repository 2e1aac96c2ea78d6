import { watchWords } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { throwAway } from './recordingStore.js';

/** What becomes of a recording that is kept in the browser: it is judged, saved as files, or thrown away once one is sure. */
export function KeptActions(props: {
  /** By which the judging page finds it; undefined where it is not wholly kept. */
  readonly id: string | undefined;
  readonly onSave: () => Promise<void>;
  readonly throwsAway: string;
  readonly onThrown: () => void;
  readonly children?: ComponentChildren;
}) {
  const { id, onSave, throwsAway, onThrown, children } = props;
  const [isSure, setSure] = useState(false);
  return (
    <p class="keep">
      {id !== undefined && (
        <a class="button main" href={`../check-a-sweep/?recording=${id}`}>
          {watchWords.judge}
        </a>
      )}
      {children}
      <button type="button" onClick={onSave}>
        {watchWords.save}
      </button>
      <button
        type="button"
        onClick={async () => {
          if (!isSure) return setSure(true);
          await throwAway(throwsAway).catch(() => {});
          onThrown();
        }}
      >
        {isSure ? watchWords.throwAwaySure : watchWords.throwAway}
      </button>
    </p>
  );
}
