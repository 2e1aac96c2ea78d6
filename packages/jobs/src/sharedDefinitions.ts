import type { JsonSchema } from '@valibot/to-json-schema';

type Part = Record<string, unknown>;

/** From so many characters on a part that stands twice is worth a definition of its own. */
const worthwhile = 120;

/** The same definition with what stands in it more than once, such as the texts of a resistance, written once below `$defs`. */
export function sharedDefinitions(definition: JsonSchema): JsonSchema {
  const counts = new Map<string, number>();
  visit(definition, (part) => {
    const text = JSON.stringify(part);
    if (text.length >= worthwhile) counts.set(text, (counts.get(text) ?? 0) + 1);
  });
  const names = new Map<string, string>();
  const definitions: Part = {};
  const replaced = (value: unknown, isTop = false): unknown => {
    if (Array.isArray(value)) return value.map((one) => replaced(one));
    if (typeof value !== 'object' || value === null) return value;
    const text = JSON.stringify(value);
    const named = names.get(text);
    if (named) return { $ref: named };
    const parts = Object.entries(value).map(([name, part]) => [name, replaced(part)]);
    const own: Part = Object.fromEntries(parts);
    if (isTop || (counts.get(text) ?? 0) < 2) return own;
    const name = `shared-${names.size + 1}`;
    names.set(text, `#/$defs/${name}`);
    definitions[name] = own;
    return { $ref: `#/$defs/${name}` };
  };
  const { $defs = {}, ...rest } = replaced(definition, true) as Part;
  return { ...rest, $defs: { ...($defs as Part), ...definitions } } as JsonSchema;
}

/** Every schema of a definition; not the groups of fields, which are none. */
function visit(value: unknown, at: (part: Part) => void): void {
  if (Array.isArray(value)) {
    for (const one of value) visit(one, at);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  if ('type' in value || 'anyOf' in value) at(value as Part);
  for (const part of Object.values(value)) visit(part, at);
}
