type Placed = { readonly position: string }

/** Places in the order of the formation, from the goalkeeper up; a position it does not hold comes last. */
export function inFormation<Place extends Placed>(
  places: readonly Place[],
  formation: readonly string[],
): readonly Place[] {
  const rank = ({ position }: Place) => {
    const at = formation.indexOf(position)
    return at < 0 ? formation.length : at
  }
  return places.toSorted((a, b) => rank(a) - rank(b))
}
