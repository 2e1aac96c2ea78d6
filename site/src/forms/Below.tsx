import { useEffect, useState } from 'preact/hooks';
import { AsItCame } from './AsItCame.js';
import { BenchSheet } from './BenchSheet.js';
import type { ShownResult } from './Calculator.js';

/** What stands below a form: drawn in a task of its own, so that the answer above waits for no table. */
export function Below({ result }: { readonly result: ShownResult | undefined }) {
  const [drawn, setDrawn] = useState(result);
  useEffect(() => setDrawn(result), [result]);
  return drawn ? (
    <div key="own" class="below">
      {drawn.below}
      <BenchSheet rows={drawn.sheet} />
    </div>
  ) : (
    <AsItCame key="came" class="below" />
  );
}
