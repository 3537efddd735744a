export type BlockSide = 'left' | 'right'

/** Why a position is in a child's set tonight: its home, its stretch, or what its history owes it. The optimum treats them alike. */
export type PositionPreference = 'home' | 'stretch' | 'owed'

/** A child who is here and can play. */
export type LineupChild = {
  readonly childId: string
  /** At most three. A position that is not on tonight's field is ignored. */
  readonly positions: readonly { readonly position: string; readonly preference: PositionPreference }[]
  /** The goalkeeper position needs both: it stands in `positions`, and the child is willing (not 'no'). */
  readonly goalkeeper: 'yes' | 'sometimes' | 'no'
  /** Blocks played in past weeks, whole numbers; `left` and `right` are those on each side. */
  readonly past: { readonly blocks: number; readonly left: number; readonly right: number }
}

export type LineupRequest = {
  /** The places on the field; every one is filled in every block. */
  readonly positions: readonly string[]
  /** Which of the positions is the goalkeeper's, or null when the activity has none. */
  readonly goalkeeperPosition: string | null
  readonly blocks: readonly { readonly side: BlockSide }[]
  readonly children: readonly LineupChild[]
}

export type LineupBlock = {
  readonly side: BlockSide
  /** In the order of the request's positions. */
  readonly places: readonly { readonly position: string; readonly childId: string }[]
  /** Who is not on the field, by id: live opponents or resting. */
  readonly off: readonly string[]
}

export type LineupPlan = {
  readonly blocks: readonly LineupBlock[]
  /** Sum over the children of (past blocks + tonight's blocks)², the smallest possible. */
  readonly sumOfSquares: number
  /** Sum over children and sides of (past + tonight)², the smallest possible at that `sumOfSquares`. */
  readonly sideSumOfSquares: number
  /** How often a child on the field in two blocks in a row stands at another position in the second. */
  readonly changes: number
  /** Both sums are proven smallest: they come from an exact minimum-cost flow. */
  readonly fairnessProven: true
  /** Whether fewer changes are proven impossible at those sums; when false, `changes` is the best found. */
  readonly changesProven: boolean
}

export type LineupRefusal =
  | {
      readonly code: 'too-few-children'
      readonly positions: number
      readonly children: number
      readonly shortage: number
    }
  /** The smallest set of positions that fewer children can fill than it has places, and all children who could. */
  | {
      readonly code: 'positions-lack-children'
      readonly positions: readonly string[]
      readonly children: readonly string[]
    }
