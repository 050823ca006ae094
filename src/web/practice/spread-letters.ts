/** Letters for places on a chart that may lie close together: each stands beside its place, none over another. */

export interface LetterPlace {
  /** Where the place itself is, px. */
  readonly x: number;
  readonly y: number;
}

/** Two letters' circles do not touch, px between their middles. */
const APART_PX = 26;
const ROUNDS = 60;

/** Where the letters stand: at their places where there is room, else pushed apart; the same places always give the same. */
export function spreadLetters(places: readonly LetterPlace[]): readonly LetterPlace[] {
  const spread = places.map(({ x, y }) => ({ x, y }));
  for (let round = 0; round < ROUNDS; round += 1) {
    let moved = false;
    for (const [at, one] of spread.entries())
      for (const [other, second] of spread.entries()) {
        if (other <= at) continue;
        const dx = second.x - one.x;
        const dy = second.y - one.y;
        const apartPx = Math.hypot(dx, dy);
        if (apartPx >= APART_PX) continue;
        // On the same spot they part sideways.
        const unit = apartPx < 0.01 ? { x: 1, y: 0 } : { x: dx / apartPx, y: dy / apartPx };
        const push = (APART_PX - apartPx) / 2 + 0.01;
        one.x -= unit.x * push;
        one.y -= unit.y * push;
        second.x += unit.x * push;
        second.y += unit.y * push;
        moved = true;
      }
    if (!moved) break;
  }
  return spread;
}
