import { InputError } from '@truesweep/core';

/** A value of a table's cell. */
export type Cell = string | number | null;

/** A statement that was made ready. */
interface Statement {
  run(...values: Cell[]): unknown;
  get(...values: Cell[]): unknown;
  all(...values: Cell[]): unknown[];
}

/** A database as both libraries give it. */
export interface Database {
  exec(sql: string): unknown;
  prepare(sql: string): Statement;
  close(): unknown;
}

type Opener = new (path: string) => Database;

/**
 * Opens a file by Node's own SQLite where this Node has it, else by the package that stands in for it.
 *
 * @throws InputError `missing-file` where there is neither.
 */
export async function openDatabase(path: string): Promise<Database> {
  const Own = ownSqlite();
  if (Own) return new Own(path);
  let Substitute: Opener;
  try {
    Substitute = (await import('libsql')).default as unknown as Opener;
  } catch {
    throw new InputError(
      'missing-file',
      'libsql',
      `This Node (${process.version}) has no SQLite of its own, and the optional package libsql is not installed: install it, or use Node 22.13 or newer.`,
    );
  }
  return new Substitute(path);
}

/** Node's own. Some Nodes warn that it is experimental, which is no news to who keeps a history. */
function ownSqlite(): Opener | undefined {
  const { emitWarning } = process;
  process.emitWarning = () => {};
  try {
    // From Node 22.5 on; by this name no bundler takes it for a package.
    return process.getBuiltinModule?.('node:sqlite')?.DatabaseSync;
  } finally {
    process.emitWarning = emitWarning;
  }
}

/** SQLite's primary result codes (sqlite.org, Result and Error Codes; from memory). */
const faults = {
  BUSY: 5,
  LOCKED: 6,
  READONLY: 8,
  IOERR: 10,
  CORRUPT: 11,
  FULL: 13,
  CANTOPEN: 14,
  NOTADB: 26,
} as const;

/** What went wrong in SQLite, by the name of its result code; nothing where it is another error. */
export function sqliteFault(error: unknown): keyof typeof faults | undefined {
  const { errcode, rawCode, message } = error as {
    readonly errcode?: unknown;
    readonly rawCode?: unknown;
    readonly message?: string;
  };
  // The stand-in tells what it could not open in words that end with the code.
  const told = errcode ?? rawCode ?? /^ConnectionFailed\(.*: (\d+)"?\)$/.exec(message ?? '')?.[1];
  const code = Number(told) & 0xff;
  return (Object.keys(faults) as (keyof typeof faults)[]).find((name) => faults[name] === code);
}
