/** A table of texts with its caption; the first cell of a row names it. */
export function DataTable(props: {
  readonly id: string;
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}) {
  const { id, caption, head, rows } = props;
  return (
    // Where it is wider than the screen the keyboard must be able to move it.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must take the focus
    <section class="wide" aria-label={caption} tabIndex={0}>
      <table id={id} class="lists">
        <caption>{caption}</caption>
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
          {rows.map(([name, ...cells]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, i) => (
                <td key={head[i + 1]} data-label={head[i + 1]}>
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
