let holds = false;
const followers = new Set<() => void>();

/** Says whether this page holds recordings of its user, which are lost with it. */
export function holdRecordings(doesHold: boolean): void {
  holds = doesHold;
  for (const follower of followers) follower();
}

/** Whether the page holds any. */
export function holdsRecordings(): boolean {
  return holds;
}

/** Calls back when that changes; returns how to stop it. */
export function followHolding(onChange: () => void): () => void {
  followers.add(onChange);
  return () => followers.delete(onChange);
}
