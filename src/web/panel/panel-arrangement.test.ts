import { expect, it } from "vitest";
import { arrangePanel } from "./panel-arrangement.ts";

it.each([
  // A phone, a small window, a large one, one view enlarged.
  [1, 374, 1, "beside"],
  [2, 374, 2, "stacked"],
  [3, 374, 1, "beside"],
  [4, 374, 1, "beside"],
  [1, 416, 1, "beside"],
  [2, 416, 2, "stacked"],
  [3, 416, 3, "stacked"],
  [4, 416, 1, "beside"],
  [1, 547, 1, "beside"],
  [2, 547, 2, "stacked"],
  [3, 547, 3, "stacked"],
  [4, 547, 2, "beside"],
  [2, 1400, 2, "stacked"],
  [4, 1400, 4, "stacked"],
] as const)("lays %i receivers on %i px in %i columns, %s", (count, widthPx, columns, form) => {
  expect(arrangePanel(count, widthPx)).toEqual({ columns, form });
});
