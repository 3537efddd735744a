/** Lists as they are written: put in, taken out, moved. None of these changes the list it is given. */
export function inserted<Item>(list: readonly Item[], at: number, item: Item): readonly Item[] {
  return [...list.slice(0, at), item, ...list.slice(at)]
}

export function removed<Item>(list: readonly Item[], at: number): readonly Item[] {
  return list.filter((_, index) => index !== at)
}

export function replaced<Item>(list: readonly Item[], at: number, item: Item): readonly Item[] {
  return list.map((each, index) => (index === at ? item : each))
}

/** Moves one item by so many places; the same list where it would leave the list. */
export function moved<Item>(list: readonly Item[], at: number, by: number): readonly Item[] {
  const item = list[at]
  const to = at + by
  if (item === undefined || to < 0 || to >= list.length) return list
  return inserted(removed(list, at), to, item)
}
