/** A strip in the chain in place of the steps that would say what is covered. Their places are kept. */

import type { JSX } from "preact";

export interface WithheldStepsProps {
  readonly from: number;
  readonly to: number;
}

export const WithheldSteps = ({ from, to }: WithheldStepsProps): JSX.Element => (
  <li class="withheld-steps">
    <span class="covered">covered: {from === to ? `step ${from}` : `steps ${from} to ${to}`}</span>
  </li>
);
