import { say } from './say.js';

/**
 * Words of the exercises that a lesson ends with.
 *
 * @example
 * exerciseSetWords.numbered('2', '4') // => 'Exercise 2 of 4'
 */
export const exerciseSetWords = {
  title: 'Exercises',
  begin: 'Begin the exercises',
  goOn: 'Go on with the exercises',
  again: 'Begin again with other numbers',
  fetching: 'Fetching the exercises …',
  notFetched: 'The exercises could not be fetched. Try again with a connection.',
  notKept: 'This browser keeps nothing for this page: your progress is lost when you leave it.',
  numbered: (number: string, count: string): string => say`Exercise ${number} of ${count}`,
  progress: (done: string, count: string): string => say`${done} of ${count} are done.`,
  finished: (right: string, count: string): string =>
    say`All are done: ${right} of ${count} without the worked answer.`,
  check: 'Check',
  hint: 'Hint',
  showAnswer: 'Show the worked answer',
  next: 'Next',
  empty: (example: string): string =>
    say`Nothing is written here yet; an answer looks like ${example}.`,
  unchosen: 'Nothing is chosen yet; choose one of the answers.',
  workedAnswer: 'The worked answer',
  examples: { V: '2.5 V', Ω: '4.7 kΩ', '%': '40 %', '°C': '65 °C', '1': '3' },
} as const;

/**
 * Words of the sheet of exercises that a teacher prints.
 *
 * @example
 * sheetWords.title('7', 'easy') // => 'Exercises, sheet 7, easy'
 */
export const sheetWords = {
  title: (seed: string, level: string): string => say`Exercises, sheet ${seed}, ${level}`,
  answersTitle: (seed: string, level: string): string => say`Answers to sheet ${seed}, ${level}`,
  seed: 'Number of the sheet',
  level: 'Level',
  topics: 'Topics',
  make: 'Make the sheet',
  print: 'Print it',
  link: 'A link to this very sheet',
  name: 'Name and date:',
  levels: { easy: 'easy', medium: 'medium', hard: 'hard' },
  topicLabels: {
    loading: 'Reading with a load',
    limiter: 'Limiting resistor',
    'meter-loading': 'What a meter takes',
    windows: 'Ends of a window',
    'dropout-visibility': 'Whether a dropout shows',
    trace: 'A drawn sweep',
    thermistor: 'A thermistor on its pull-up',
  },
  wrongSeed: (text: string, most: string): string =>
    say`The number of the sheet is “${text}”; it must be a whole number from 1 to ${most}. Sheet 1 is shown.`,
  wrongLevel: (text: string): string =>
    say`“${text}” is no level; it must be easy, medium or hard. The easy one is shown.`,
  wrongTopic: (text: string, known: string): string =>
    say`“${text}” is no topic; the topics are ${known}. It was left out.`,
  noTopic: 'No topic is chosen; all but the drawn sweeps are shown.',
} as const;
