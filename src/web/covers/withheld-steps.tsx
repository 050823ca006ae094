/** A strip in the chain in place of the steps that would say what is covered. */

import type { JSX } from "preact";
import { type WithheldExtent, withheldWords } from "../../draw/index.ts";

export const WithheldSteps = ({ extent }: { readonly extent: WithheldExtent }): JSX.Element => (
  <li class="withheld-steps">
    <span class="covered">covered: {withheldWords(extent)}</span>
  </li>
);
