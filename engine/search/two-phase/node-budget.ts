/** Counts what a search looks at, and asks now and then whether the time is up. */

/** Nodes between two askings: well under a millisecond. */
export const NODES_PER_ASKING = 2_048

/** One search's count. Once it has ended it stays so; whoever walks looks at `isEnded` before each step. */
export class NodeBudget {
  nNodes = 0
  isEnded = false
  private nodesToAskAt = NODES_PER_ASKING
  private readonly isOver: () => boolean

  /** @param isOver is the time up? */
  constructor(isOver: () => boolean) {
    this.isOver = isOver
  }

  /** Called ahead of looking at so many nodes. */
  count(nMore: number): void {
    this.nNodes += nMore
    if (this.nNodes < this.nodesToAskAt) return
    this.nodesToAskAt = this.nNodes + NODES_PER_ASKING
    if (this.isOver()) this.isEnded = true
  }
}
