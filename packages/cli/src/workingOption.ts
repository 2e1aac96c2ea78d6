import { commandHelp } from '@truesweep/wording';
import { Option } from 'commander';

/** `--working`, which is no data: it goes with no option that prints such. */
export const workingOption = (...others: readonly string[]): Option =>
  new Option('--working', commandHelp.working).conflicts(['json', ...others]);
