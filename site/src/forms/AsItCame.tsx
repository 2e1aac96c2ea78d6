import type { Ref } from 'preact';

/**
 * What the page came with at this place, left as it is: while a page's markup is taken over, what an element is told to hold is
 * neither compared nor written, so that it needs no result worked out anew.
 */
export function AsItCame(props: { readonly class: string; readonly at?: Ref<HTMLDivElement> }) {
  return (
    <div ref={props.at ?? null} class={props.class} dangerouslySetInnerHTML={{ __html: '' }} />
  );
}
