import { checkPageWords } from '@truesweep/wording';
import { useRef, useState } from 'preact/hooks';

/** Where recordings are chosen or dropped, or the demo's are asked for. */
export function ChooseFiles(props: {
  readonly onFiles: (files: readonly File[]) => Promise<void>;
  readonly onDemo: () => Promise<void>;
}) {
  const { onFiles, onDemo } = props;
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  // The browser writes beside it what was chosen there last: not what was dropped, and not the demo.
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
      onDrop={async (event) => {
        event.preventDefault();
        setOver(false);
        forget();
        await onFiles([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <label class="choose" for="files">
        {checkPageWords.files}
      </label>
      <input
        id="files"
        ref={input}
        type="file"
        multiple
        aria-describedby="files-hint"
        // The same file can be chosen again, such as after it was recorded anew.
        onClick={forget}
        onChange={async (event) => await onFiles([...(event.currentTarget.files ?? [])])}
      />
      <p class="hint" id="files-hint">
        {checkPageWords.filesHint}
      </p>
      <button
        type="button"
        class="quiet"
        onClick={async () => {
          forget();
          await onDemo();
        }}
      >
        {checkPageWords.demo}
      </button>
    </form>
  );
}
