/** Every code that an `InputError` of any package bears, by what kind of mistake it names. */
export type InputErrorCode =
  | ValueCode
  | ShapeCode
  | QuantityCode
  | CircuitCode
  | SweepCode
  | FileCode;

/** A number, word or text that isn't what the field takes. */
type ValueCode =
  | 'missing'
  | 'not-finite'
  | 'negative'
  | 'zero'
  | 'out-of-range'
  | 'out-of-order'
  | 'not-whole'
  | 'not-boolean'
  | 'unknown-choice'
  | 'not-one-of'
  | 'not-a-number'
  | 'not-a-count'
  | 'not-a-text'
  | 'not-a-name'
  | 'not-a-function'
  | 'not-bytes'
  | 'too-much-work';

/** Fields that don't fit together, or aren't there. */
type ShapeCode =
  | 'not-a-group'
  | 'not-a-list'
  | 'unknown-field'
  | 'unknown-name'
  | 'unexpected'
  | 'duplicate'
  | 'field-twice'
  | 'not-a-version'
  | 'newer-version'
  | 'not-a-hash'
  | 'not-a-column';

/** A quantity written as text. */
type QuantityCode =
  | 'empty'
  | 'not-a-quantity'
  | 'ambiguous-fraction'
  | 'ambiguous-separator'
  | 'thousands-separator'
  | 'misplaced-space'
  | 'ambiguous-exponent'
  | 'wrong-unit'
  | 'unknown-unit'
  | 'too-large'
  | 'too-small'
  | 'not-exact';

/** A circuit, an instrument or a hook-up that cannot be. */
type CircuitCode =
  | 'not-a-permutation'
  | 'same-terminal'
  | 'no-output'
  | 'no-span'
  | 'no-travel'
  | 'no-range'
  | 'no-stretch'
  | 'no-rest-level'
  | 'no-pull-down'
  | 'has-pull-up'
  | 'impossible-setting';

/** A recorded sweep that can't be judged, or not as it was told. */
type SweepCode =
  | 'length-mismatch'
  | 'too-few-samples'
  | 'no-duration'
  | 'time-backwards'
  | 'ended'
  | 'not-a-reading'
  | 'nothing-to-score';

/** A file that can't be read, found or written. */
type FileCode =
  | 'missing-file'
  | 'not-a-file'
  | 'unreadable-file'
  | 'file-exists'
  | 'cannot-write'
  | 'one-input'
  | 'output-is-input'
  | 'not-utf-8'
  | 'not-json'
  | 'no-report'
  | 'not-in-report'
  | 'broken-samples'
  | 'recording-changed'
  | 'empty-file'
  | 'binary-file'
  | 'no-numbers'
  | 'one-column'
  | 'one-sample'
  | 'not-a-sound'
  | 'no-format'
  | 'no-samples'
  | 'unknown-coding'
  | 'missing-field'
  | 'extra-field'
  | 'endless-line'
  | 'heading-mismatch'
  | 'no-such-column'
  | 'ambiguous-column'
  | 'same-column'
  | 'no-signal-column'
  | 'no-time-column'
  | 'no-scale'
  | 'no-coupling'
  | 'no-such-channel'
  | 'two-times'
  | 'mixed-times'
  | 'ambiguous-comma';
