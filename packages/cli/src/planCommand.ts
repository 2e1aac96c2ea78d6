import { commandHelp } from '@truesweep/wording';
import { Command } from 'commander';
import { jobBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';
import { workingOption } from './workingOption.js';

interface PlanOptions {
  readonly job: string;
  readonly wiperCurrent?: string;
  readonly trackPower?: string;
  readonly sourceCurrent?: string;
  readonly span?: string;
  readonly otherSource?: string;
  readonly json?: true;
  readonly working?: true;
}

/** `truesweep plan`: advises on the limiting resistor and shows what each wrong connection would do. */
export function planCommand(output: Output): Command {
  return new Command('plan')
    .description(commandHelp.plan)
    .requiredOption('--job <file>', commandHelp.job)
    .option('--wiper-current <current>', commandHelp.wiperCurrent)
    .option('--track-power <power>', commandHelp.trackPower)
    .option('--source-current <current>', commandHelp.sourceCurrent)
    .option('--span <fraction>', commandHelp.span)
    .option('--other-source <voltage>', commandHelp.otherSource)
    .option('--json', commandHelp.json)
    .addOption(workingOption())
    .addHelpText('after', commandHelp.planMore)
    .action(async ({ job, json, working, ...wishes }: PlanOptions) => {
      const { planHookUp } = await import('./planHookUp.js');
      const { printPlan } = await import('./printPlan.js');
      const { readJobInput } = await import('./readInput.js');
      const read = await readJobInput(job, jobBounds(output));
      const plan = planHookUp(read, wishes);
      output.print(json ? jsonText('plan', plan) : layOut(printPlan(plan), output));
      if (!working) return;
      const { planWorkings } = await import('./planWorkings.js');
      const { printWorkings } = await import('./printWorkings.js');
      output.print(layOut(printWorkings(planWorkings(read, wishes, plan)), output));
    });
}
