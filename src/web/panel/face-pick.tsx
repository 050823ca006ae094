/** Which face a receiver wears. The short name lies under an unseen native list, which says it in full. */

import { still } from "../../draw/index.ts";
import { FACES, type Face } from "../../panel/index.ts";

const SHORT: Readonly<Record<Face, string>> = { cdi: "CDI", hsi: "HSI", rmi: "RMI" };
const FULL: Readonly<Record<Face, string>> = {
  cdi: "CDI, fixed card",
  hsi: "HSI, situation indicator",
  rmi: "RMI, bearing pointer",
};

export interface FacePickProps {
  readonly receiver: string;
  readonly face: Face;
  readonly onPick: (face: Face) => void;
}

export const FacePick = still(({ receiver, face, onPick }: FacePickProps) => (
  <span class="face-pick">
    <span aria-hidden="true">{SHORT[face]}</span>
    <select
      aria-label={`${receiver} face`}
      value={face}
      onChange={(event) => {
        const picked = FACES.find((known) => known === event.currentTarget.value);
        if (picked !== undefined) onPick(picked);
      }}
    >
      {FACES.map((each) => (
        <option key={each} value={each}>
          {FULL[each]}
        </option>
      ))}
    </select>
  </span>
));
