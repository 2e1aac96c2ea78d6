import type { NoReading, UnreadRows } from '@truesweep/core';
import type { ColumnRole, DelimitedOptions } from '../delimitedOptions.js';
import { scaleOf } from '../rowFields.js';
import type { RowLayout } from '../rowLayout.js';
import type { LiveRow, LiveSamples } from './liveReader.js';
import type { PlacedRow } from './stampClock.js';

/** Rows on their way: kept as samples and as text alike. */
export interface SavedRows {
  add(row: PlacedRow<LiveRow>): void;
  /** Hands out what was added since it was asked last. */
  take(): LiveSamples;
  /** What must be said of the text beside its headings. */
  readonly savedAs: Pick<
    DelimitedOptions,
    'supplyColumn' | 'secondColumn' | 'positionColumn' | 'voltsPerUnit'
  >;
}

/** What stands for a reading that is not there. */
const notRead: Readonly<Record<NoReading, string>> = {
  none: '',
  'above-range': 'OL',
  'below-range': '-OL',
};

type Writable<Plain> = { -readonly [field in keyof Plain]: Plain[field] };

/** Keeps rows as samples and as lines of text that are read as the same samples, to the last bit: counts and percent as they came, the rest in s and V. */
export function savedRows(layout: RowLayout, roles: readonly ColumnRole[]): SavedRows {
  const { columns } = layout;
  const scales = roles.map((role) => scaleOf(layout, role));
  const headings = roles.map((role) => (role === 'time' ? 'time (s)' : headingOf(columns, role)));
  const { voltsPerUnit } = columns.signal;
  let text = `${headings.join(',')}\n`;
  let kept: number[][] = roles.map(() => []);
  let unread: Writable<UnreadRows>[] = [];

  const note = (reading: NoReading, time: number): void => {
    const after = kept[0]!.length;
    const last = unread.at(-1);
    if (last && last.reading === reading && last.after === after) {
      last.rows += 1;
      last.end = time;
    } else unread.push({ reading, rows: 1, after, start: time, end: time });
  };

  return {
    add({ time, row: { values, reading } }) {
      const fields = values.map((value, place) => {
        if (place === 0) return String(time);
        if (Number.isFinite(value)) return String(value);
        return roles[place] === 'signal' ? notRead[reading ?? 'none'] : '';
      });
      text += `${fields.join(',')}\n`;
      if (reading) return note(reading, time);
      for (const [place, value] of values.entries()) {
        kept[place]!.push(place === 0 ? time : value * scales[place]!);
      }
    },
    take() {
      const taken: Record<string, unknown> = Object.fromEntries(
        roles.map((role, place) => [role, Float64Array.from(kept[place]!)]),
      );
      if (unread.length > 0) taken.unread = unread;
      taken.text = text;
      [kept, unread, text] = [roles.map(() => []), [], ''];
      return taken as unknown as LiveSamples;
    },
    savedAs: {
      ...(columns.supply && { supplyColumn: 'supply' }),
      ...(columns.second && { secondColumn: 'second' }),
      ...(columns.position && { positionColumn: 'position' }),
      ...(voltsPerUnit !== undefined && { voltsPerUnit }),
    },
  };
}

function headingOf(columns: RowLayout['columns'], role: ColumnRole): string {
  const column = columns[role];
  if (!column || !('unit' in column)) return role;
  const isScaled = column.unit === 'counts' || column.unit === '%';
  return `${role} (${isScaled ? column.unit : 'V'})`;
}
