/** Brings a step of the chain into sight. */

/** Kept free above and below it, px: the chain fades at its foot. */
const FREE_PX = 18;

/**
 * Scrolls the chain in its own sheet. Where the chain has no scroller of its own, as on a phone, the page moves, and that only when the
 * step was `wanted`: a page that moves under a resting pointer would be a nuisance.
 */
export function bringIntoView(step: HTMLElement, chain: HTMLElement, wanted: boolean): void {
  if (chain.scrollHeight <= chain.clientHeight + 1) {
    if (wanted) step.scrollIntoView({ block: "nearest" });
    return;
  }
  const [at, room] = [step.getBoundingClientRect(), chain.getBoundingClientRect()];
  const aboveBy = room.top + FREE_PX / 2 - at.top;
  const belowBy = at.bottom - (room.bottom - FREE_PX);
  if (aboveBy > 0) chain.scrollTop -= aboveBy;
  else if (belowBy > 0) chain.scrollTop += belowBy;
}
