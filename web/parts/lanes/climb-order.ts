/**
 * The order in which lanes are shown while they climb to their places: a few at a time, so that the eye can follow.
 * Pure: it knows ids in an order, and nothing of time.
 */

/** The shown order with exactly the members of the target: who has gone leaves, who is new stands where the target has them. */
export function withMembersOf(target: readonly string[], shown: readonly string[]): readonly string[] {
  const wanted = new Set(target)
  const order = shown.filter((id) => wanted.has(id))
  if (order.length === target.length) return order.length === shown.length ? shown : order
  const present = new Set(order)
  for (const [index, id] of target.entries()) {
    if (present.has(id)) continue
    const before = index === 0 ? -1 : order.indexOf(target[index - 1])
    order.splice(before + 1, 0, id)
  }
  return order
}

/**
 * One step towards the target. At most `nMoversMax` lanes go to their places, the foremost first; all others keep
 * the order among themselves and only make room. Repeated, it ends at the target.
 */
export function nextOrder(shown: readonly string[], target: readonly string[], nMoversMax: number): readonly string[] {
  const rank = new Map(target.map((id, index) => [id, index]))
  const rankOf = (id: string) => rank.get(id) ?? 0
  const settled = new Set(longestRising(shown, rankOf))
  const movers = target.filter((id) => !settled.has(id))
  if (movers.length <= nMoversMax) return target
  const chosen = new Set(movers.slice(0, nMoversMax))
  const next = target.filter((id) => settled.has(id) || chosen.has(id))
  let last: string | null = null
  for (const id of shown) {
    if (chosen.has(id)) continue
    // Who has to wait stays behind the same neighbour.
    if (!settled.has(id)) next.splice(last === null ? 0 : next.indexOf(last) + 1, 0, id)
    last = id
  }
  return next
}

export function sameOrder(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((id, index) => id === b[index])
}

/**
 * A longest part of the order that is in the right order already: these need not move.
 * Source: patience sorting; Knuth, TAOCP 3, section 5.1.4.
 */
function longestRising(shown: readonly string[], rankOf: (id: string) => number): string[] {
  const piles: string[] = []
  const below = new Map<string, string | undefined>()
  for (const id of shown) {
    let pile = piles.findIndex((top) => rankOf(top) >= rankOf(id))
    if (pile < 0) pile = piles.length
    below.set(id, piles[pile - 1])
    piles[pile] = id
  }
  const rising: string[] = []
  for (let id = piles.at(-1); id !== undefined; id = below.get(id)) rising.unshift(id)
  return rising
}
