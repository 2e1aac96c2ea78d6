/** The standard output, as far as its looks go. */
interface Stream {
  readonly isTTY?: boolean;
  readonly columns?: number;
}

/** For a pipe or a file. */
const usualWidth = 80;
const narrowest = 60;
/** Longer lines are hard to read. */
const widest = 120;

/**
 * Width and colour for an output: a terminal's own width, or `COLUMNS` (POSIX.1-2017, 8.3, from memory), from 60 to 120; colour only on a
 * terminal, and not where `NO_COLOR` is set to anything or the terminal is dumb.
 */
export function terminalOf(
  { isTTY = false, columns }: Stream,
  env: Readonly<Record<string, string | undefined>>,
): { readonly width: number; readonly colour: boolean } {
  const told = Number(env.COLUMNS);
  const wanted = (isTTY && columns) || (told > 0 ? told : usualWidth);
  return {
    width: Math.round(Math.min(widest, Math.max(narrowest, wanted))),
    colour: isTTY && !env.NO_COLOR && env.TERM !== 'dumb',
  };
}
