/**
 * What a piece of work allocates. The heap is read after many short portions, each far below what sets off the garbage
 * collector, so that nothing that was allocated can have been swept away before it was counted; the median of all
 * portions leaves out those in which the collector, or something else, was at work.
 */

/** @returns bytes by which the heap grows in a portion, the reading itself included (some hundred bytes) */
export function bytesPerPortion(portion: () => void, nPortions: number): number {
  portion() // Once before, so that what is compiled or set up at first use does not count.
  const growths: number[] = []
  for (let index = 0; index < nPortions; index++) {
    const before = process.memoryUsage().heapUsed
    portion()
    growths.push(process.memoryUsage().heapUsed - before)
  }
  return growths.sort((a, b) => a - b)[Math.trunc(nPortions / 2)]
}
