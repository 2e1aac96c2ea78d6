import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';

interface TerminalsOptions {
  readonly meterError: string;
  readonly meterOhms: string;
  readonly json?: true;
}

/** `truesweep terminals`: tells from ohmmeter readings which terminal is which. */
export function terminalsCommand(terminal: Terminal): Command {
  return new Command('terminals')
    .description(commandHelp.terminals)
    .argument('<readings...>', commandHelp.pinReadings)
    .option('--meter-error <percent>', commandHelp.meterError, '1 %')
    .option('--meter-ohms <resistance>', commandHelp.meterOhms, '1 Ω')
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.terminalsMore)
    .action(async (readings: string[], options: TerminalsOptions) => {
      const { pinsOf } = await import('./pinsOf.js');
      const { printPins } = await import('./printPins.js');
      const found = pinsOf(readings, options.meterError, options.meterOhms);
      terminal.print(
        options.json ? jsonText('terminals', found) : layOut(printPins(found), terminal),
      );
    });
}
