import { formWords } from '@truesweep/wording';
import { useNewerVersion } from './useNewerVersion.js';

/** Says that a newer version of the site waits, and changes to it when asked: what was entered stays. */
export function NewerVersion() {
  const change = useNewerVersion();
  return (
    <div role="status">
      {change && (
        <p class="notice">
          {formWords.newerVersion}{' '}
          <button type="button" onClick={change}>
            {formWords.changeVersion}
          </button>
        </p>
      )}
    </div>
  );
}
