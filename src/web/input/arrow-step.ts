/** What a key does to a thing that turns or counts: arrows by one step, with Shift or the page keys by a big one. */

/** Steps as the sliders of the web count: up and right are more. Null for any other key. */
export function arrowStep(event: KeyboardEvent, stepBy: number, bigStepBy: number): number | null {
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  const size = event.shiftKey ? bigStepBy : stepBy;
  switch (event.key) {
    case "ArrowUp":
    case "ArrowRight":
      return size;
    case "ArrowDown":
    case "ArrowLeft":
      return -size;
    case "PageUp":
      return bigStepBy;
    case "PageDown":
      return -bigStepBy;
    default:
      return null;
  }
}
