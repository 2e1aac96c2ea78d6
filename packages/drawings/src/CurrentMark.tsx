/** The sign of a numbered current: I with a small number at its foot. */
export function CurrentMark({ number }: { readonly number: number }) {
  return (
    <>
      <tspan font-style="italic">I</tspan>
      <tspan dy="3" font-size="10">
        {number}
      </tspan>
    </>
  );
}
