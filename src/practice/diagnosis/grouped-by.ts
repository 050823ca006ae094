/** Things by a key they share, in the order in which keys and things come. */
export function groupedBy<T, Key>(things: Iterable<T>, keyOf: (thing: T) => Key): Map<Key, T[]> {
  const groups = new Map<Key, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}
