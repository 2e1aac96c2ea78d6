import { run } from '../packages/cli/src/run.js';
import type { Output } from '../packages/cli/src/terminal.js';

/** Runs the command line in this process, as on a terminal of 80 columns without colours; what it printed and its exit code. */
export async function runTruesweep(
  args: readonly string[],
  more: Partial<Output> = {},
): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ['', ''];
  const code = await run(args, {
    width: 80,
    colour: false,
    print: (text) => {
      out += text;
    },
    printError: (text) => {
      err += text;
    },
    ...more,
  });
  return { code, out, err };
}
