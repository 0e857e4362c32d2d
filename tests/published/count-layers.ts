/** Counts what is first met after 0, 1, 2, ... turns among numbered things, by breadth-first search over their numbers. */

/** Where to count. */
export type Numbered = {
  readonly nRanks: number
  readonly home: number
  readonly nTurns: number
  readonly rankAfter: (rank: number, turnIndex: number) => number
  /** Ranks that stand for the same as this one; none when left out. */
  readonly othersLike?: (rank: number) => readonly number[]
  /** How many things a rank stands for; 1 when left out. */
  readonly weightOf?: (rank: number) => number
}

/** @param depthMax where to stop; as far as anything new is met when left out */
export function countLayers(numbered: Numbered, depthMax = Number.POSITIVE_INFINITY): number[] {
  const { nRanks, home, nTurns, rankAfter, othersLike = () => [], weightOf = () => 1 } = numbered
  const isMet = new Uint8Array(Math.ceil(nRanks / 8))
  let next: number[] = []
  let count = 0
  const meet = (rank: number) => {
    if ((isMet[rank >>> 3] >>> (rank & 7)) & 1) return
    isMet[rank >>> 3] |= 1 << (rank & 7)
    next.push(rank)
    count += weightOf(rank)
    for (const other of othersLike(rank)) meet(other)
  }
  meet(home)
  const counts: number[] = []
  while (count > 0) {
    counts.push(count)
    if (counts.length > depthMax) break
    const last = next
    next = []
    count = 0
    for (const rank of last) for (let index = 0; index < nTurns; index++) meet(rankAfter(rank, index))
  }
  return counts
}
