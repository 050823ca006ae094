/** A paper strip in place of a control that would give the covered thing away. */

import type { JSX } from "preact";

export const CoveredNote = ({ what }: { readonly what: string }): JSX.Element => (
  <p class="covered" data-cover={what}>
    covered: {what}
  </p>
);
