import type { ExerciseLevel, ExerciseTopic } from '@truesweep/explain';
import { sheetWords as words } from '@truesweep/wording/working';

/** Which exercises a sheet has. */
export interface SheetChoice {
  /** A whole number, 1 to {@link mostSheets}. */
  readonly seed: number;
  readonly level: ExerciseLevel;
  /** One or more, in the order of {@link sheetTopics}. */
  readonly topics: readonly ExerciseTopic[];
}

/** The highest number of a sheet. */
export const mostSheets = 999_999;

/** What a sheet can be about; a test holds it to what the exercises know. */
export const sheetTopics = Object.keys(words.topicLabels) as readonly ExerciseTopic[];

/** What a sheet's level can be. */
export const sheetLevels = Object.keys(words.levels) as readonly ExerciseLevel[];

const withoutDrawings = sheetTopics.filter((topic) => topic !== 'trace');

/** The sheet that an address names, and what in it can't be read. */
export function readSheetAddress(search: string): {
  readonly choice: SheetChoice;
  readonly refused: readonly string[];
} {
  const asked = new URLSearchParams(search);
  const refused: string[] = [];
  const seedText = asked.get('seed') ?? '1';
  const isSeed = /^\d{1,6}$/.test(seedText) && Number(seedText) >= 1;
  if (!isSeed) refused.push(words.wrongSeed(seedText, String(mostSheets)));
  const levelText = asked.get('level') ?? 'easy';
  const level = sheetLevels.find((one) => one === levelText);
  if (!level) refused.push(words.wrongLevel(levelText));
  const named = (asked.get('topics') ?? withoutDrawings.join(','))
    .split(',')
    .filter((topic) => topic !== '');
  for (const topic of named)
    if (!sheetTopics.some((known) => known === topic))
      refused.push(words.wrongTopic(topic, sheetTopics.join(', ')));
  const topics = sheetTopics.filter((topic) => named.includes(topic));
  if (topics.length === 0) refused.push(words.noTopic);
  return {
    choice: {
      seed: isSeed ? Number(seedText) : 1,
      level: level ?? 'easy',
      topics: topics.length > 0 ? topics : withoutDrawings,
    },
    refused,
  };
}

/** What names a sheet in an address. */
export function sheetSearch({ seed, level, topics }: SheetChoice): string {
  return `?seed=${seed}&level=${level}&topics=${topics.join(',')}`;
}
