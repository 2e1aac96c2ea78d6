import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Terminal } from './terminal.js';

interface PlanOptions {
  readonly job: string;
  readonly wiperCurrent?: string;
  readonly trackPower?: string;
  readonly sourceCurrent?: string;
  readonly span?: string;
  readonly otherSource?: string;
  readonly json?: true;
}

/** `truesweep plan`: advises on the limiting resistor and shows what each wrong connection would do. */
export function planCommand(terminal: Terminal): Command {
  return new Command('plan')
    .description(commandHelp.plan)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--wiper-current <current>', commandHelp.wiperCurrent)
    .option('--track-power <power>', commandHelp.trackPower)
    .option('--source-current <current>', commandHelp.sourceCurrent)
    .option('--span <fraction>', commandHelp.span)
    .option('--other-source <voltage>', commandHelp.otherSource)
    .option('--json', commandHelp.json)
    .addHelpText('after', commandHelp.planMore)
    .action(async ({ job, json, ...wishes }: PlanOptions) => {
      const { planHookUp } = await import('./planHookUp.js');
      const { printPlan } = await import('./printPlan.js');
      const { readJobInput } = await import('./readInput.js');
      const plan = planHookUp(await readJobInput(job), wishes);
      terminal.print(json ? jsonText('plan', plan) : layOut(printPlan(plan), terminal));
    });
}
