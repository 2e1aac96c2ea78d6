import type { Seconds } from '@truesweep/core';

/** So much of what came first tells how lines are written. */
const headBytes = 65_536;
/** A check behind a line, which says nothing of its columns. */
const check = /\*[0-9A-F]{4}(?=\r?\n|$)/gim;

/** The first bytes of a port, by which its lines are looked at, and read anew where they must be read otherwise. */
export function headOfLines() {
  const parts: { readonly bytes: Uint8Array; readonly arrived: Seconds }[] = [];
  let length = 0;
  let isAll = true;
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
    /** Whole lines without their checks, the heading first wherever it came. */
    bytes(): Uint8Array {
      const decoder = new TextDecoder();
      const text = parts.map(({ bytes }) => decoder.decode(bytes, { stream: true })).join('');
      // The first and the last line may be halves.
      const lines = text.replace(check, '').split('\n').slice(1, -1);
      const heading = lines.findIndex((line) => /^\W*\p{L}/u.test(line));
      const isFirst = /^\W*\p{L}/u.test(text);
      const first = isFirst ? text.slice(0, text.indexOf('\n')).replace(check, '') : undefined;
      const before = first ?? lines[heading];
      const all = before === undefined ? lines : [before, ...lines];
      return new TextEncoder().encode(`${all.join('\n')}\n`);
    },
  };
}
