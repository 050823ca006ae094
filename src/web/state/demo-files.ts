/** The demo's files as text, built into the bench: they load as one part, after the page, and need no server. */

const FILES = import.meta.glob<string>("../../../demo/**/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** Text by path from the demo's folder: `scenes/01-which-way-to-the-course.yaml`. */
export const DEMO_FILES: ReadonlyMap<string, string> = new Map(
  Object.entries(FILES).map(([path, text]) => [path.replace(/^.*\/demo\//, ""), text]),
);
