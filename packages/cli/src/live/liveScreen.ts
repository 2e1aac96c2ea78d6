import { openSync } from 'node:fs';
import { clearScreenDown, cursorTo, emitKeypressEvents, moveCursor } from 'node:readline';
import { ReadStream } from 'node:tty';
import type { Screen } from '../terminal.js';

const hideCursor = '\u001b[?25l';
const showCursor = '\u001b[?25h';
const usualRows = 24;

/** The keys of the terminal, where the standard input may be something else. */
export function terminalKeys(): NodeJS.ReadStream | undefined {
  if (process.stdin.isTTY) return process.stdin;
  try {
    return new ReadStream(openSync('/dev/tty', 'r'));
  } catch {
    return undefined;
  }
}

/**
 * Draws on a terminal.
 *
 * @param onKey Called with the name of each key; Ctrl-C is `stop`.
 */
export function liveScreen(
  output: NodeJS.WriteStream,
  input: NodeJS.ReadStream | undefined,
  onKey: (key: string) => void,
): Screen {
  let drawn = 0;
  // The cursor stands on the line below.
  const rows = (): number => (output.rows ?? usualRows) - 1;
  const back = (): void => {
    if (drawn > 0) moveCursor(output, 0, -drawn);
    cursorTo(output, 0);
  };
  const onKeypress = (_: unknown, key: { readonly name?: string; readonly ctrl?: boolean }): void =>
    onKey(key.ctrl && key.name === 'c' ? 'stop' : (key.name ?? ''));
  if (input) {
    emitKeypressEvents(input);
    input.setRawMode(true);
    input.on('keypress', onKeypress);
    input.resume();
  }
  output.write(hideCursor);
  return {
    hasKeys: input !== undefined,
    rows,
    draw(lines) {
      back();
      // Longer than the terminal it could not be drawn over.
      const shown = lines.trimEnd().split('\n').slice(0, rows());
      clearScreenDown(output);
      output.write(`${shown.join('\n')}\n`);
      drawn = shown.length;
    },
    end() {
      output.write(showCursor);
      if (!input) return;
      input.off('keypress', onKeypress);
      input.setRawMode(false);
      input.pause();
      if (input !== process.stdin) input.destroy();
    },
  };
}
