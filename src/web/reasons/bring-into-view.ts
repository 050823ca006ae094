/** Brings a step of the chain into sight. */

/** Kept free above it, px. */
const FREE_ABOVE_PX = 9;
/** And below it: there lies the note that says which steps are lit. */
const FREE_BELOW_PX = 36;

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
  const aboveBy = room.top + FREE_ABOVE_PX - at.top;
  const belowBy = at.bottom - (room.bottom - FREE_BELOW_PX);
  if (aboveBy > 0) chain.scrollTop -= aboveBy;
  else if (belowBy > 0) chain.scrollTop += belowBy;
}
