const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Calls back where the system or somebody at the keyboard wants the program to end; a second time it ends at once. */
export function onInterrupt(listener: () => void): () => void {
  const leave = (): void => {
    for (const signal of signals) process.off(signal, once);
  };
  const once = (): void => {
    leave();
    listener();
  };
  for (const signal of signals) process.on(signal, once);
  return leave;
}
