import { commandHelp, jobEntries, jobWrittenSentence } from '@truesweep/wording';
import { Command } from 'commander';
import { jobFields } from './jobFields.js';
import type { JobEntries } from './jobOfEntries.js';
import { layOut } from './layOut.js';
import type { Output } from './terminal.js';
import { paragraph } from './textPart.js';
import type { JobFile } from './writeJob.js';

/** `truesweep write-job`: writes a job's file of what is told by options, or asked for on a terminal. */
export function writeJobCommand(output: Output): Command {
  const command = new Command('write-job')
    .description(commandHelp.writeJob)
    .requiredOption('--out <file>', commandHelp.out);
  for (const { name, flags } of jobFields) {
    const { label, example } = jobEntries[name];
    command.option(flags, `${label}, such as ${example}`);
  }
  return command
    .option('--recording <file>', commandHelp.jobRecording, collected)
    .option('--overwrite', commandHelp.overwriteJob)
    .addHelpText('after', commandHelp.writeJobMore)
    .action(async (options: JobEntries & JobFile) => {
      const { writeJob } = await import('./writeJob.js');
      const { out, overwrite, recording, ...told } = options;
      await writeJob(
        told,
        { out, ...(overwrite && { overwrite }), recording: recording ?? [] },
        output,
      );
      output.print(layOut([paragraph(jobWrittenSentence(out))], output));
    });
}

function collected(file: string, before: readonly string[] = []): readonly string[] {
  return [...before, file];
}
