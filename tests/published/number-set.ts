/**
 * A set of whole numbers 0..2^53-1 in one array. JavaScript's own set keeps numbers beyond 2^31 as objects each, which
 * millions of them make slow.
 */

/** The golden ratio times 2^32, odd: spreads neighbouring numbers (Knuth, The Art of Computer Programming 3, 6.4). */
const SPREAD = 0x9e3779b1

export class NumberSet {
  size = 0
  private readonly slots: Float64Array
  private readonly mask: number

  /** @param nMax no more than so many different numbers are added */
  constructor(nMax: number) {
    const nSlots = 2 ** Math.ceil(Math.log2(2 * nMax + 1))
    this.slots = new Float64Array(nSlots).fill(-1)
    this.mask = nSlots - 1
  }

  has(number: number): boolean {
    return this.slots[this.slotOf(number)] === number
  }

  add(number: number): void {
    const slot = this.slotOf(number)
    if (this.slots[slot] === number) return
    this.slots[slot] = number
    this.size++
  }

  *values(): Generator<number> {
    for (const number of this.slots) if (number >= 0) yield number
  }

  /** @returns where the number is, or where it would go */
  private slotOf(number: number): number {
    const mixed = Math.imul(number, SPREAD) ^ Math.imul(Math.trunc(number / 2 ** 16), SPREAD ^ 0x5bd1e995)
    let slot = (mixed ^ (mixed >>> 15)) & this.mask
    while (this.slots[slot] !== -1 && this.slots[slot] !== number) slot = (slot + 1) & this.mask
    return slot
  }
}
