import { type History, openHistory } from '@truesweep/history/node';

/** Opens a history for a piece of work, and closes it whatever comes of that. */
export async function withHistory<Result>(
  path: string,
  create: boolean,
  work: (history: History) => Result | Promise<Result>,
): Promise<Result> {
  const history = await openHistory(path, { create });
  try {
    return await work(history);
  } finally {
    history.close();
  }
}
