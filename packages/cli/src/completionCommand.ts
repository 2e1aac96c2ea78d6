import { InputError } from '@truesweep/core';
import { commandHelp, unknownShellSentence } from '@truesweep/wording';
import { Command } from 'commander';
import type { Terminal } from './terminal.js';

/** `truesweep completion`: prints what a shell needs to complete commands and options. */
export function completionCommand(terminal: Terminal, program: Command): Command {
  return new Command('completion')
    .description(commandHelp.completion)
    .argument('<shell>', commandHelp.shell)
    .addHelpText('after', commandHelp.completionMore)
    .action((shell: string) => {
      const write = scripts[shell];
      if (!write) throw new InputError('not-one-of', 'shell', unknownShellSentence(shell));
      terminal.print(write(wordsOf(program)));
    });
}

/** The words after a command's name: its options. */
type CommandWords = readonly (readonly [command: string, options: readonly string[]])[];

function wordsOf(program: Command): CommandWords {
  return program.commands.map((command) => [
    command.name(),
    [...command.options.flatMap(({ long }) => long ?? []), '--help'],
  ]);
}

const scripts: Readonly<Record<string, (words: CommandWords) => string>> = {
  bash: (words) => `_truesweep() {
  local word=\${COMP_WORDS[COMP_CWORD]} options=
  case \${COMP_WORDS[1]} in
${words.map(([command, options]) => `    ${command}) options='${options.join(' ')}' ;;`).join('\n')}
  esac
  if [ "$COMP_CWORD" = 1 ]; then
    COMPREPLY=($(compgen -W '${words.map(([command]) => command).join(' ')} --help --version' -- "$word"))
  elif [ "\${word#-}" != "$word" ]; then
    COMPREPLY=($(compgen -W "$options" -- "$word"))
  else
    COMPREPLY=($(compgen -f -- "$word"))
  fi
}
complete -o filenames -F _truesweep truesweep
`,
  zsh: (words) => `#compdef truesweep
if (( CURRENT == 2 )); then
  compadd ${words.map(([command]) => command).join(' ')}
else
  case $words[2] in
${words.map(([command, options]) => `    ${command}) compadd -- ${options.join(' ')} ;;`).join('\n')}
  esac
  _files
fi
`,
  fish: (words) =>
    words
      .flatMap(([command, options]) => [
        `complete -c truesweep -n __fish_use_subcommand -a ${command}`,
        ...options.map(
          (option) =>
            `complete -c truesweep -n '__fish_seen_subcommand_from ${command}' -l ${option.slice(2)}`,
        ),
      ])
      .join('\n')
      .concat('\n'),
};
