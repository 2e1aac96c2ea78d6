import { formWords } from '@truesweep/wording';
import { useNewerVersion } from './useNewerVersion.js';

/** Says that a newer version of the site waits, and changes to it when asked; or that another tab did. */
export function NewerVersion() {
  const newer = useNewerVersion();
  const { newerVersion, changedElsewhere, changeVersion, changeVersionHolding, loadAnew } =
    formWords;
  return (
    <div role="status">
      {newer && (
        <p class="notice">
          {newer.state === 'waits' ? newerVersion : changedElsewhere}{' '}
          <button type="button" onClick={newer.change}>
            {newer.state !== 'waits'
              ? loadAnew
              : newer.holds
                ? changeVersionHolding
                : changeVersion}
          </button>
        </p>
      )}
    </div>
  );
}
