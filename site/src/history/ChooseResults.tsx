import { historyPageWords } from '@truesweep/wording';
import { useRef, useState } from 'preact/hooks';

/** Where files of results are chosen or dropped. */
export function ChooseResults(props: { readonly onFiles: (files: readonly File[]) => void }) {
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  // The browser writes beside it what was chosen there last: not what was dropped.
  const forget = () => {
    if (input.current) input.current.value = '';
  };
  return (
    <form
      class={isOver ? 'drop over' : 'drop'}
      onSubmit={(event) => event.preventDefault()}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        forget();
        props.onFiles([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <label class="choose" for="results">
        {historyPageWords.files}
      </label>
      <input
        id="results"
        ref={input}
        type="file"
        multiple
        accept=".jsonl,.json"
        aria-describedby="results-hint"
        onClick={forget}
        onChange={(event) => props.onFiles([...(event.currentTarget.files ?? [])])}
      />
      <p class="hint" id="results-hint">
        {historyPageWords.filesHint}
      </p>
    </form>
  );
}
