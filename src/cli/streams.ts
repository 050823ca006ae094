/** The process's own streams: data to stdout, talk to stderr. */

/** The operand or file name that stands for stdin or stdout. */
export const STREAM = "-";

/** Lets a reader that closes early (`| head`) end the program quietly. Call once, first. */
export function endQuietlyOnClosedPipe(): void {
  for (const stream of [process.stdout, process.stderr])
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "EPIPE") throw error;
      process.exit();
    });
}

/** Prints data, with a line end. */
export const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};

/** Prints bytes as they are. */
export const printBytes = (bytes: Uint8Array): void => {
  process.stdout.write(bytes);
};

/** Tells the person something, on stderr, with a line end. */
export const tell = (text: string): void => {
  process.stderr.write(`${text}\n`);
};

/** Everything that stands on stdin, or its beginning: reading ends once more than `mostBytes` have come. */
export async function readStdin(mostBytes: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of process.stdin) {
    chunks.push(Buffer.from(chunk));
    bytes += chunk.length;
    if (bytes > mostBytes) break;
  }
  return Buffer.concat(chunks);
}
