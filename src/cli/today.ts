/** The one place where the command line looks at the calendar. */

/** Today's date, ISO, by UTC as aviation counts days. */
export const today = (): string => new Date().toISOString().slice(0, 10);
