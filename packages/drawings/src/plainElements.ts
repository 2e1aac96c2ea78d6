// What JSX is compiled to where Preact is left out: the build of the entry `svg` puts this in place of Preact's runtime.

/** Its children stand without an element around them. */
export function Fragment({ children }: { readonly children?: unknown }): unknown {
  return children;
}

/** An element as plain data. */
export function jsx(type: unknown, props: Readonly<Record<string, unknown>>): object {
  return { type, props };
}

export { jsx as jsxs };
