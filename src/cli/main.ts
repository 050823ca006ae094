/** The entry that the launcher imports. */

import { run } from "./run.ts";
import { endQuietlyOnClosedPipe } from "./streams.ts";

endQuietlyOnClosedPipe();
process.exitCode = await run(process.argv.slice(2));
