import { InputError, isInputError, nearestName } from '@truesweep/core';
import { Command, CommanderError } from 'commander';
import type { Output } from './commands/output.js';
import { withRedis } from './commands/redisOptions.js';
import {
  lackingWordSentence,
  queueHelp,
  secretOnLineSentence,
  spareWordSentence,
  unknownWordSentence,
} from './queueWords.js';
import { RedisFault } from './redis/redisFault.js';
import { StorageFault } from './storage/storageFault.js';
import { version } from './version.js';

/** The program itself, or something beyond it, failed; an input was wrong. */
const [failedCode, badInputCode] = [1, 2];

/**
 * Runs the command.
 *
 * @param args What stands behind the program's name.
 * @returns The exit code: 0, 1 where Redis or a store can't be used, 2 where an input was wrong.
 */
export async function run(args: readonly string[], output: Output): Promise<number> {
  let exitCode = 0;
  const program = new Command('truesweep-queue')
    .description(queueHelp.program)
    .version(version, '--version', queueHelp.version)
    .helpCommand(false)
    .addHelpText('after', queueHelp.programMore);
  const store = (command: Command) =>
    command
      .option('--endpoint <address>', queueHelp.endpoint)
      .option('--region <name>', queueHelp.region, 'us-east-1');
  const put = store(withRedis(new Command('put')))
    .description(queueHelp.put)
    .argument('<paths...>', queueHelp.paths)
    .requiredOption('--job <file>', queueHelp.job)
    .option('--folder <folder>', queueHelp.folder)
    .option('--bucket <bucket>', queueHelp.bucket)
    .option('--sensor <name>', queueHelp.sensor)
    .option('--date <text>', queueHelp.date)
    .option('--note <text>', queueHelp.note)
    .option('--largest <size>', queueHelp.largest, '1 GB')
    .option('--tries <count>', queueHelp.tries, '12')
    .option('--pause <time>', queueHelp.pause, '1 s')
    .action(async (paths, options) => {
      const { putRecordings } = await import('./commands/putRecordings.js');
      exitCode = await putRecordings(paths, options, output);
    });
  const work = store(withRedis(new Command('work')))
    .description(queueHelp.work)
    .requiredOption('--recordings <place...>', queueHelp.recordings)
    .requiredOption('--results <place>', queueHelp.results)
    .option('--at-once <count>', queueHelp.lanes)
    .option('--memory <size>', queueHelp.memory, '2 GB')
    .option('--longest <time>', queueHelp.longest, '10 min')
    .option('--largest <size>', queueHelp.largest, '1 GB')
    .option('--takeover <time>', queueHelp.takeover, '30 s')
    .option('--takeovers <count>', queueHelp.takeovers, '10')
    .option('--stop-within <time>', queueHelp.stopWithin, '60 s')
    .option('--listen <address>', queueHelp.listen, '127.0.0.1:9718')
    .option('--each', queueHelp.each)
    .action(async ({ atOnce, ...options }) => {
      const { workHere } = await import('./commands/workHere.js');
      exitCode = await workHere({ ...options, lanes: atOnce }, output);
    });
  const parked = withRedis(new Command('parked'))
    .description(queueHelp.parked)
    .option('--retry <id...>', queueHelp.retry)
    .option('--drop <id...>', queueHelp.drop)
    .option('--json', queueHelp.json)
    .action(async (options) => {
      const { mindParked } = await import('./commands/mindParked.js');
      exitCode = await mindParked(options, output);
    });
  const status = withRedis(new Command('status'))
    .description(queueHelp.status)
    .option('--json', queueHelp.json)
    .action(async (options) => {
      const { tellStatus } = await import('./commands/tellStatus.js');
      exitCode = await tellStatus(options, output);
    });
  const commands = [put, work, parked, status];
  for (const command of commands) program.addCommand(command);
  for (const command of [program, ...commands]) {
    command
      .helpOption('-h, --help', queueHelp.help)
      .showSuggestionAfterError(false)
      .exitOverride((error) => {
        throw refusedWords(error, command) ?? error;
      })
      .configureOutput({
        writeOut: output.print,
        writeErr: output.printError,
        // Said below.
        outputError: () => {},
      });
  }
  try {
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : badInputCode;
    if (isInputError(error)) {
      const { path, place, message, code } = error;
      const where = place ? `${path}, line ${place.line}` : path;
      output.tell(`${message.startsWith(path) ? '' : `${where}: `}${message} (${code})`);
      return badInputCode;
    }
    if (error instanceof RedisFault || error instanceof StorageFault) {
      output.tell(`${error.message} (${error.code})`);
      return failedCode;
    }
    throw error;
  }
}

/** What is wrong with the words of a command; of a word that is not known no more than its name is repeated, since what follows may be a secret. */
function refusedWords({ code, message }: CommanderError, command: Command): InputError | undefined {
  const quoted = /'(.*)'/s.exec(message)?.[1] ?? '';
  const [word = ''] = quoted.split(/[=\s]/);
  switch (code) {
    case 'commander.unknownOption': {
      if (/pass|secret|key|token|user/i.test(word)) {
        return new InputError('unknown-name', word, secretOnLineSentence);
      }
      const known = command.options.flatMap(({ long }) => long ?? []);
      const nearest = nearestName(word, known);
      return new InputError('unknown-name', word, unknownWordSentence(word, nearest));
    }
    case 'commander.unknownCommand':
      return new InputError(
        'unknown-name',
        'command',
        unknownWordSentence(
          `“${word.slice(0, 20)}”`,
          nearestName(
            word,
            command.commands.map((one) => one.name()),
          ),
        ),
      );
    case 'commander.missingMandatoryOptionValue':
    case 'commander.missingArgument':
    case 'commander.optionMissingArgument':
      return new InputError('missing', command.name(), lackingWordSentence(word));
    case 'commander.excessArguments':
      return new InputError('unexpected', command.name(), spareWordSentence);
    default:
      return undefined;
  }
}
