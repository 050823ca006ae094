/** Pictures to the clipboard, where the browser lets a page do so. */

export const canCopyPictures = (): boolean =>
  typeof ClipboardItem !== "undefined" && typeof navigator.clipboard?.write === "function";

/**
 * Resolves to whether the PNG is there now; rejects when it cannot be made. The picture is handed over as a promise, since some
 * browsers take nothing once the press that asked for it is long past.
 */
export async function copyPicture(png: Promise<Blob>): Promise<boolean> {
  // So that a picture that fails is told as such, and not as a refusal.
  const [written] = await Promise.all([
    navigator.clipboard.write([new ClipboardItem({ "image/png": png })]).then(
      () => true,
      () => false,
    ),
    png,
  ]);
  return written;
}
