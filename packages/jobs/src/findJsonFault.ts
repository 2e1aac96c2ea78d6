/**
 * Where a text stops being JSON (RFC 8259): the offset of the first character that doesn't fit, which is the
 * text's length where it ends too early; undefined for JSON. Groups more than 100 deep don't fit either.
 */
export function findJsonFault(text: string): number | undefined {
  const atoms = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
  const strings = /"(?:[^"\\\p{Cc}]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*"/uy;
  let at = 0;
  let depth = 0;

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
    skipSpace();
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  };
  const list = (end: string, item: () => boolean): boolean => {
    if (take(end)) return true;
    if (++depth > 100) return false;
    do if (!item()) return false;
    while (take(','));
    depth--;
    return take(end);
  };
  const value = (): boolean => {
    if (take('[')) return list(']', value);
    if (take('{')) return list('}', () => match(strings) && take(':') && value());
    return match(strings) || match(atoms);
  };

  const whole = value();
  skipSpace();
  return whole && at === text.length ? undefined : at;
}
