/** A table of text: head and rows. On a narrow screen each row is a list of its cells with their heads. */
export function Table(props: {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}) {
  const { head, rows } = props;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
    <section class="table" aria-label={head.join(', ')} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {head.map((cell) => (
              <th key={cell} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.join()}>
              {row.map((cell, i) => (
                <td key={head[i]} data-label={head[i]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
