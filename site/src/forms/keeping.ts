/** What was kept of a form: texts by their names, and what of it can't be used. */
export interface Kept {
  readonly texts: Readonly<Record<string, string>>;
  readonly notice?: string;
}

/** Where what stands in a form is kept: the page's address, or the browser's own storage on the guided way. */
export interface Keeping {
  /** What was kept; undefined where nothing was. */
  readonly read: () => Kept | undefined;
  /** Keeps the texts that differ from what stands in the form first. */
  readonly write: (changed: Readonly<Record<string, string>>) => void;
  /** Calls back when something else changed what is kept; returns how to stop that. */
  readonly follow: (onChange: () => void) => () => void;
  /** An address with what stands in the form; left out where there is none. */
  readonly link?: (changed: Readonly<Record<string, string>>) => string;
}
