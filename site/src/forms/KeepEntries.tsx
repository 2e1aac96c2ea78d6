import { formWords } from '@truesweep/wording';

/** A link with what stands in a form, where it is kept in the address, and the way back to what stood there first. */
export function KeepEntries(props: {
  readonly link: string | undefined;
  readonly onAgain: () => void;
}) {
  const { link, onAgain } = props;
  return (
    <p class="keep">
      {link !== undefined && <a href={link}>{formWords.link}</a>}{' '}
      <button type="button" onClick={onAgain}>
        {formWords.again}
      </button>
    </p>
  );
}
