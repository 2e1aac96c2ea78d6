import type { Seconds } from '@truesweep/core';

/** So much of what came first tells how lines are written. */
const headBytes = 65_536;
/** A check behind a line, which says nothing of its columns. */
const check = /\*[0-9A-F]{4}(?=[\r\n]|$)/gim;
/** A recorder may end its lines by either sign alone. */
const lineEnd = /\r\n|\n|\r/;

/** The first bytes of a port, by which its lines are looked at, and read anew where they must be read otherwise. */
export function headOfLines() {
  const parts: { readonly bytes: Uint8Array; readonly arrived: Seconds }[] = [];
  let length = 0;
  let isAll = true;
  const text = (): string => {
    const decoder = new TextDecoder();
    return parts.map(({ bytes }) => decoder.decode(bytes, { stream: true })).join('');
  };
  return {
    add(bytes: Uint8Array, arrived: Seconds): void {
      if (length > headBytes) {
        isAll = false;
        return;
      }
      parts.push({ bytes: Uint8Array.from(bytes), arrived });
      length += bytes.length;
    },
    parts: () => [...parts],
    /** Whether nothing came after it. */
    isAll: () => isAll,
    /** Whether two whole lines are there. */
    isBegun: () => text().split(lineEnd).length > 2,
    /** Whether the first line is a heading over the second one, and no half of one. */
    beginsWithHeading(): boolean {
      const [first = '', second = ''] = text().split(lineEnd);
      return isHeading(first) && fieldsOf(first) === fieldsOf(second);
    },
    /** The heading as it came, with a line end; undefined where none did, or its first half is missing. */
    heading(): Uint8Array | undefined {
      const [first = '', ...others] = text().split(lineEnd);
      const found = [...(this.beginsWithHeading() ? [first] : []), ...others.slice(0, -1)].find(
        isHeading,
      );
      return found === undefined ? undefined : new TextEncoder().encode(`${found}\n`);
    },
    /** Whole lines without their checks, the heading first wherever it came. */
    bytes(): Uint8Array {
      const [first = '', ...others] = text().replace(check, '').split(lineEnd);
      // The first and the last line may be halves.
      const lines = others.slice(0, -1);
      const before = isHeading(first) ? first : lines.find(isHeading);
      const all = before === undefined ? lines : [before, ...lines];
      return new TextEncoder().encode(`${all.join('\n')}\n`);
    },
  };
}

const isHeading = (line: string): boolean => /^\W*\p{L}/u.test(line);

const fieldsOf = (line: string): number => line.split(/[,;\t|]/).length;
