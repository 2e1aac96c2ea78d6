/** In place of the signals that islands could be handed: none of this site is, and the library for them would be kept by every visitor. */
export function signal() {
  throw new Error('No island of this site takes signals; hand it plain values.');
}
