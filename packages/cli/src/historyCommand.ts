import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import type { HistoryOptions } from './history/showHistory.js';
import type { Output } from './terminal.js';

/** `truesweep history`: keeps what was judged, and prints what changed of the sensors. */
export function historyCommand(output: Output): Command {
  return new Command('history')
    .description(commandHelp.history)
    .argument('[sources...]', commandHelp.historySources)
    .option('--store <file>', commandHelp.historyStore)
    .option('--sensor <name>', commandHelp.historySensor)
    .option('--save <file>', commandHelp.historySave)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.historyMore)
    .action(async (sources: string[], options: HistoryOptions) => {
      const { showHistory } = await import('./history/showHistory.js');
      await showHistory(sources, options, output);
    });
}
