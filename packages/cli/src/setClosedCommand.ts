import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';
import { workingOption } from './workingOption.js';

interface SetClosedOptions {
  readonly reading: string;
  readonly wanted: string;
  readonly turned: string;
  readonly then: string;
  readonly uncertainty?: string;
  readonly json?: true;
  readonly working?: true;
}

/** `truesweep set-closed`: tells how far to turn a sensor with slotted holes for the closed reading. */
export function setClosedCommand(terminal: Terminal): Command {
  return new Command('set-closed')
    .description(commandHelp.setClosed)
    .requiredOption('--reading <voltage>', commandHelp.readingNow)
    .requiredOption('--wanted <voltage>', commandHelp.wanted)
    .requiredOption('--turned <degrees>', commandHelp.turned)
    .requiredOption('--then <voltage>', commandHelp.secondReading)
    .option('--uncertainty <voltage>', commandHelp.uncertainty)
    .option('--json', commandHelp.json)
    .addOption(workingOption())
    .addHelpText('after', commandHelp.setClosedMore)
    .action(async ({ json, working, ...entries }: SetClosedOptions) => {
      const { printSetting } = await import('./printSetting.js');
      const { enteredSetting, settingOf } = await import('./settingOf.js');
      const setting = settingOf(entries);
      terminal.print(
        json ? jsonText('set-closed', setting) : layOut(printSetting(setting), terminal),
      );
      if (!working) return;
      const { explainClosedSetting, whereWritten } = await import('@truesweep/explain');
      const { printWorkings } = await import('./printWorkings.js');
      const written = whereWritten(() => explainClosedSetting(...enteredSetting(entries)));
      terminal.print(layOut(printWorkings(written), terminal));
    });
}
