import { Fragment } from 'preact/jsx-runtime';

/** What JSX makes of an element: plain data, by Preact's runtime or by `plainElements.ts`. */
interface Element {
  readonly type: unknown;
  readonly props: Readonly<Record<string, unknown>>;
}

/**
 * The markup of a drawing: components are called, elements written out with their attributes. The drawings keep no state, so that
 * nothing more is needed.
 */
export function elementText(node: unknown): string {
  if (node === null || node === undefined || typeof node === 'boolean') return '';
  if (Array.isArray(node)) return node.map(elementText).join('');
  if (!isElement(node)) return escaped(String(node));
  const { type, props } = node;
  if (type === Fragment) return elementText(props.children);
  if (typeof type === 'function') return elementText(type(props));
  const content = elementText(props.children);
  const open = `<${String(type)}${attributes(props)}`;
  return content === '' ? `${open}/>` : `${open}>${content}</${String(type)}>`;
}

function isElement(node: unknown): node is Element {
  return typeof node === 'object' && node !== null && 'type' in node && 'props' in node;
}

function attributes(props: Element['props']): string {
  return Object.entries(props)
    .filter(([name, value]) => name !== 'children' && isWritten(value))
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
}

function isWritten(value: unknown): boolean {
  return value !== undefined && value !== null && value !== false;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
