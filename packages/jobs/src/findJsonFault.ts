/** Where a text is no JSON that can be taken. */
export interface JsonFault {
  /** Offset of the first character that doesn't fit; the text's length where it ends too early. */
  readonly at: number;
  /** The field that stands for the second time in its group, where nothing else is wrong. */
  readonly twice?: string;
}

/**
 * Where a text stops being JSON (RFC 8259), or names a field twice, of which a reader would take one in silence; undefined for JSON.
 * Groups more than 100 deep don't fit either.
 */
export function findJsonFault(text: string): JsonFault | undefined {
  const atoms = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
  let at = 0;
  let depth = 0;
  let twice: string | undefined;

  const skipSpace = () => {
    while (' \t\n\r'.includes(text[at] ?? 'x')) at++;
  };
  const take = (sign: string): boolean => {
    skipSpace();
    if (text[at] !== sign) return false;
    at++;
    return true;
  };
  const atom = (): boolean => {
    skipSpace();
    atoms.lastIndex = at;
    if (!atoms.test(text)) return false;
    at = atoms.lastIndex;
    return true;
  };
  const string = (): boolean => {
    skipSpace();
    const end = stringEnd(text, at);
    at = end ?? at;
    return end !== undefined;
  };
  const list = (end: string, item: () => boolean): boolean => {
    if (take(end)) return true;
    if (++depth > 100) return false;
    do if (!item()) return false;
    while (take(','));
    depth--;
    return take(end);
  };
  const group = (): boolean => {
    const names = new Set<string>();
    return list('}', () => {
      skipSpace();
      const from = at;
      if (!string()) return false;
      const name = JSON.parse(text.slice(from, at));
      if (names.has(name)) {
        twice = name;
        at = from;
        return false;
      }
      names.add(name);
      return take(':') && value();
    });
  };
  const value = (): boolean => {
    if (take('[')) return list(']', value);
    if (take('{')) return group();
    return string() || atom();
  };

  const whole = value();
  skipSpace();
  if (whole && at === text.length) return undefined;
  return twice === undefined ? { at } : { at, twice };
}

/** Where a string that begins at an offset has ended; undefined where none begins there or it isn't whole. */
function stringEnd(text: string, from: number): number | undefined {
  if (text[from] !== '"') return undefined;
  // A loop: on a text of some megabytes a regular expression with alternatives runs out of stack.
  for (let at = from + 1; at < text.length; at++) {
    const sign = text[at]!;
    if (sign === '"') return at + 1;
    if (sign < ' ') return undefined;
    if (sign !== '\\') continue;
    at++;
    if (text[at] === 'u' && /^[\da-fA-F]{4}$/.test(text.slice(at + 1, at + 5))) at += 4;
    else if (!'"\\/bfnrt'.includes(text[at] ?? 'x')) return undefined;
  }
  return undefined;
}
