/** Hands a file to the browser's downloads. */

/** Long enough for any browser to have begun. */
const KEPT_MS = 60_000;

export function download(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  // Some browsers follow only a link that stands in the page.
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), KEPT_MS);
}
