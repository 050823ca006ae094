/** Where a learner stands, naming only ideas that some answer has followed: what is merely common is nobody's yet. */

import { type AnsweredItem, type Belief, type Standing, standing } from "../diagnosis/index.ts";

export function followedStanding<Slip extends string>(
  belief: Belief<Slip>,
  history: readonly AnsweredItem<Slip>[],
): Standing<Slip> {
  const stands = standing(belief, history);
  if (stands.kind === "just-guessing") return stands;
  const isFollowed = (slip: Slip): boolean =>
    history.some(({ item, answer: { pick } }) => pick !== 0 && item.slipOptions[slip] === pick);
  return {
    kind: "slips",
    slips: stands.slips.map((one) =>
      (one.standing === "likely" || one.standing === "maybe") && !isFollowed(one.slip)
        ? { slip: one.slip, standing: "open" }
        : one,
    ),
  };
}
