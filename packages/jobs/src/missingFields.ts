/** What is used of a schema: the fields of a group, the items of a list, the steps that a value goes through, or the schema of what may be left out. */
interface Schema {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Schema>>;
  readonly item?: Schema;
  readonly pipe?: readonly Schema[];
  readonly wrapped?: Schema;
}

/** No more fields are told, and no more items of a list are looked at: a long list that is wrong is refused as fast as before. */
const most = 12;
const mostItems = 100;

/**
 * The paths of the fields that a group needs and doesn't have, in the order of the schema; of a group that is missing as a whole those that it
 * needs. So a person can add them all at once.
 */
export function missingFields(schema: Schema, value: unknown, path: string): readonly string[] {
  const found: string[] = [];
  const lookAt = (here: Schema, held: unknown, at: string): void => {
    const { entries, item } = shapeOf(here);
    if (entries && (held === undefined || isGroup(held))) {
      for (const [name, entry] of Object.entries(entries)) {
        if (found.length >= most) return;
        const part = (held as Readonly<Record<string, unknown>> | undefined)?.[name];
        const isNeeded = entry.type !== 'exact_optional';
        if (part !== undefined || isNeeded) lookAt(entry, part, `${at}.${name}`);
      }
    } else if (item && Array.isArray(held)) {
      for (const [index, one] of held.slice(0, mostItems).entries()) {
        if (found.length >= most) return;
        lookAt(item, one, `${at}[${index}]`);
      }
    } else if (held === undefined) found.push(at);
  };
  lookAt(schema, value, path);
  return found;
}

/** The step of a schema that knows its fields or items. */
function shapeOf(schema: Schema): Schema {
  if (schema.entries || schema.item) return schema;
  if (schema.wrapped) return shapeOf(schema.wrapped);
  const steps = (schema.pipe ?? []).map(shapeOf);
  return steps.find(({ entries, item }) => entries ?? item) ?? schema;
}

function isGroup(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
