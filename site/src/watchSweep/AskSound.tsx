import { watchWords } from '@truesweep/wording';
import { useState } from 'preact/hooks';
import type { Look, ReadBy } from '../checkSweep/protocol.js';
import { ReadOtherwise } from '../checkSweep/ReadOtherwise.js';

/** A sound that is yet to come. */
const look: Look = {
  name: '',
  lines: [],
  headings: [],
  isSound: true,
  read: { refusal: '' },
};

/** Asks what a sound input does not tell, as of a sound file. */
export function AskSound(props: {
  readonly onBegin: (sound: NonNullable<ReadBy['sound']>) => void;
  readonly onBack: () => void;
}) {
  const [read, setRead] = useState<ReadBy>({});
  const { sound } = read;
  return (
    <>
      <p class="hint">{watchWords.soundHint}</p>
      <ReadOtherwise look={look} read={{}} onRead={setRead} />
      <p class="keep">
        <button
          type="button"
          class="main"
          disabled={!sound}
          onClick={() => sound && props.onBegin(sound)}
        >
          {watchWords.begin}
        </button>
        <button type="button" onClick={props.onBack}>
          {watchWords.back}
        </button>
      </p>
    </>
  );
}
