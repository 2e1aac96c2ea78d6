import { generate } from 'lean-qr';

/** A text as the path of a two-dimensional code (ISO/IEC 18004), one unit a square; undefined where the text is too long for one. */
export function squareCode(text: string): string | undefined {
  try {
    const code = generate(text);
    let path = '';
    for (let y = 0; y < code.size; y++)
      for (let x = 0; x < code.size; x++) if (code.get(x, y)) path += `M${x},${y}h1v1h-1z`;
    return path;
  } catch {
    return undefined;
  }
}
