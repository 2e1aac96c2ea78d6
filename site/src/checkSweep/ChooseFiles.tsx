import { checkPageWords } from '@truesweep/wording';
import { useRef } from 'preact/hooks';

/** Where recordings are chosen or dropped, or the demo's are asked for. */
export function ChooseFiles(props: {
  readonly onFiles: (files: readonly File[]) => Promise<void>;
  readonly onDemo: () => Promise<void>;
}) {
  const { onFiles, onDemo } = props;
  const input = useRef<HTMLInputElement>(null);
  // The browser writes beside it what was chosen there last: not what was dropped, and not the demo.
  const forget = () => {
    if (input.current) input.current.value = '';
  };
  return (
    <form
      class="drop"
      onSubmit={(event) => event.preventDefault()}
      onDragOver={(event) => event.preventDefault()}
      onDrop={async (event) => {
        event.preventDefault();
        forget();
        await onFiles([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <label for="files">{checkPageWords.files}</label>
      <input
        id="files"
        ref={input}
        type="file"
        multiple
        // The same file can be chosen again, such as after it was recorded anew.
        onClick={forget}
        onChange={async (event) => await onFiles([...(event.currentTarget.files ?? [])])}
      />
      <button
        type="button"
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
