/**
 * The panel's clock as plain data: what it has counted, and by whose time. Started on the ground of the bench it counts real seconds;
 * once the flight plays it belongs to the flight: it counts the flight's seconds, and waits or goes back with it. Time comes in.
 */

export interface Stopwatch {
  readonly running: boolean;
  /** Seconds, 0 or more. */
  readonly countedS: number;
  /** Counts the flight's time, and no longer ours. */
  readonly ofFlight: boolean;
}

export const AT_REST: Stopwatch = { running: false, countedS: 0, ofFlight: false };

/** Goes on from what it has counted; by the flight's time from the next time that the flight plays. */
export const started = (watch: Stopwatch): Stopwatch => ({ ...watch, running: true, ofFlight: false });
export const stopped = (watch: Stopwatch): Stopwatch => ({ ...watch, running: false });
/** Back to nothing; a running one runs on from there. */
export const reset = (watch: Stopwatch): Stopwatch => ({ ...watch, countedS: 0 });

/** What went by since it was last looked at. */
export interface Passed {
  /** Real time, seconds. */
  readonly realS: number;
  /** The flight's time, seconds; negative when it was gone back. */
  readonly flightS: number;
  readonly playing: boolean;
}

export function counted(watch: Stopwatch, { realS, flightS, playing }: Passed): Stopwatch {
  if (!watch.running) return watch;
  const ofFlight = watch.ofFlight || playing;
  return { ...watch, ofFlight, countedS: Math.max(0, watch.countedS + (ofFlight ? flightS : realS)) };
}

/** Whole seconds as minutes and seconds: "07:05"; from a hundred minutes on with three digits. */
export function minutesSeconds(seconds: number): string {
  const wholeS = Math.floor(seconds);
  const two = (count: number) => String(count).padStart(2, "0");
  return `${two(Math.floor(wholeS / 60))}:${two(wholeS % 60)}`;
}

/** "1 minute 5 seconds", for one who listens. */
export function minutesSecondsSpoken(seconds: number): string {
  const wholeS = Math.floor(seconds);
  const [minutes, rest] = [Math.floor(wholeS / 60), wholeS % 60];
  const count = (number: number, unit: string) => `${number} ${unit}${number === 1 ? "" : "s"}`;
  return minutes === 0
    ? count(rest, "second")
    : `${count(minutes, "minute")}${rest === 0 ? "" : ` ${count(rest, "second")}`}`;
}
