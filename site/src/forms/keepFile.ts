/** Hands a file to the browser to be kept, under its own name. */
export function keepFile(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser reads it a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
