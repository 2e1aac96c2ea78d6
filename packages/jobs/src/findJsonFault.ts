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
  /** From the space on all but quotation mark and backslash, or an escape. */
  const pieces = /[ !#-[\]-\uffff]+|\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;
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
  const match = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  };
  const string = (): boolean => {
    const begun = at;
    // Piece by piece: of a text of some megabytes one expression with alternatives runs out of stack.
    if (take('"')) {
      while (match(pieces));
      if (text[at] === '"') return take('"');
    }
    at = begun;
    return false;
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
      if (!names.has(name)) return names.add(name) && take(':') && value();
      twice = name;
      at = from;
      return false;
    });
  };
  const value = (): boolean => {
    if (take('[')) return list(']', value);
    if (take('{')) return group();
    skipSpace();
    return string() || match(atoms);
  };

  const whole = value();
  skipSpace();
  if (whole && at === text.length) return undefined;
  return twice === undefined ? { at } : { at, twice };
}
