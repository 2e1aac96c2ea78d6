import { sweepColumns } from '@truesweep/core';
import { TraceDrawing, traceColumns } from '@truesweep/drawings';
import type { DrawnSweep } from '@truesweep/explain';

/** The sweep that an exercise asks about, as wide as there is room. */
export function DrawnSweepPicture(props: {
  readonly id: string;
  readonly sweep: DrawnSweep;
  readonly width: number;
}) {
  const { id, sweep } = props;
  const width = Math.round(Math.min(760, Math.max(300, props.width)));
  return (
    <TraceDrawing
      id={id}
      columns={sweepColumns(sweep, traceColumns(width))}
      findings={[]}
      width={width}
    />
  );
}
