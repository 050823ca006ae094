/** Times of a flight in words and along an axis. */

/** "20 s", "3 min", "3 min 20 s", "1 h 2 min 5 s"; whole seconds, 0 or more. */
export function timeWords(timeS: number): string {
  const whole = Math.max(0, Math.round(timeS));
  const [hours, minutes, seconds] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const parts = [
    hours > 0 ? `${hours} h` : "",
    minutes > 0 ? `${minutes} min` : "",
    seconds > 0 ? `${seconds} s` : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "0 s" : parts.join(" ");
}

/** Steps that a clock is read in, seconds. */
const STEPS_S = [10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200];

/** The smallest of a clock's steps that goes at most so often into a time. */
export const timeTickS = (spanS: number, mostTicks: number): number =>
  STEPS_S.find((stepS) => spanS / stepS <= mostTicks) ?? STEPS_S.at(-1) ?? spanS;
