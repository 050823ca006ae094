/** Things to be put in order, by buttons: nothing needs to be dragged. */

import type { JSX } from "preact";
import { moved, orderDraft, orderOf } from "./draft.ts";

export interface OrderListProps {
  readonly items: readonly { readonly letter: string; readonly text: string }[];
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

export function OrderList({ items, draft, onDraft }: OrderListProps): JSX.Element {
  const order = orderOf(
    draft,
    items.map(({ letter }) => letter),
  );
  const textOf = (letter: string): string => items.find((item) => item.letter === letter)?.text ?? "";
  const move = (letter: string, by: -1 | 1) => onDraft(orderDraft(moved(order, letter, by)));
  return (
    <ol class="practice-order">
      {order.map((letter, at) => (
        <li key={letter}>
          <span class="order-place">{at + 1}</span>
          <span class="order-text">{textOf(letter)}</span>
          <button
            type="button"
            class="button"
            aria-label={`Up: ${textOf(letter)}`}
            disabled={at === 0}
            onClick={() => move(letter, -1)}
          >
            ↑
          </button>
          <button
            type="button"
            class="button"
            aria-label={`Down: ${textOf(letter)}`}
            disabled={at === order.length - 1}
            onClick={() => move(letter, 1)}
          >
            ↓
          </button>
        </li>
      ))}
    </ol>
  );
}
