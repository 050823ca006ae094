/**
 * Pins the chance of every property test, so that a run on one machine is the run on every other. A failing property prints its own
 * seed and path; NEEDLEWORK_CHANCE=n draws other cases.
 */

import fc from "fast-check";

fc.configureGlobal({ seed: Number(process.env.NEEDLEWORK_CHANCE ?? 20_260_701) });
