/** Writes to the standard output. */
export type Print = (text: string) => void;
