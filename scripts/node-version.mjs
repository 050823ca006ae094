// @ts-check
// Why: someone with an old Node should read one sentence, not a stack trace from the middle of a dependency.
// Written in the oldest syntax that modules allow, since an old Node has to be able to read it.

/** The oldest Node that every part runs on (package.json "engines" says the same). */
export const OLDEST_NODE = "20.19";

/**
 * Null when the version will do, otherwise the sentence to show.
 * @param {string} version such as "20.19.1", without a leading v
 * @returns {string | null}
 */
export function nodeComplaint(version) {
  const have = version.split(".").map(Number);
  const want = OLDEST_NODE.split(".").map(Number);
  const major = (have[0] || 0) - (want[0] || 0);
  const minor = (have[1] || 0) - (want[1] || 0);
  if (major > 0 || (major === 0 && minor >= 0)) return null;
  return `needlework needs Node ${OLDEST_NODE} or newer, and this is Node ${version}; get a newer one from https://nodejs.org`;
}
