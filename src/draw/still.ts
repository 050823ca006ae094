/**
 * A part that stays as it is while what it is drawn from stays: under a moving needle the card is the same card. Compared one by one,
 * so whoever hands over an object or a function hands over the same one.
 */

import { Component, type ComponentChildren, type FunctionComponent, h } from "preact";

type Properties = Readonly<Record<string, unknown>>;

const differ = (one: Properties, other: Properties): boolean =>
  Object.keys(one).some((key) => !Object.is(one[key], other[key])) ||
  Object.keys(other).some((key) => !(key in one));

/** `draw`, drawn anew only when one of its properties is another than before. */
export function still<P extends object>(draw: (props: P) => ComponentChildren) {
  const drawn = draw as FunctionComponent<P>;
  return class extends Component<P> {
    static override displayName = `still ${draw.name}`;
    override shouldComponentUpdate(next: Readonly<P>): boolean {
      return differ({ ...this.props }, { ...next });
    }
    override render() {
      return h(drawn, this.props);
    }
  };
}
