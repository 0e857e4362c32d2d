/** Shows on standard error how far a long computation is: a bar on a terminal, else a line now and then. */

const BAR_CHARACTERS = 30
const LINE_EVERY_PERCENT = 10

/** A bar that is being shown. */
export type ProgressBar = {
  /** @param share 0..1 of the whole @param what what is being done at present, in a few words */
  readonly show: (share: number, what: string) => void
  /** Says something above the bar. */
  readonly say: (line: string) => void
  /** Ends the bar's line. */
  readonly end: () => void
}

/** @param out where to write: standard error, or a stand-in @param nowMs a clock that runs evenly */
export function startProgressBar(
  out: { write(text: string): unknown; isTTY?: boolean },
  nowMs: () => number,
): ProgressBar {
  const beganAtMs = nowMs()
  let shown = ''
  let percentSaid = -LINE_EVERY_PERCENT
  const clear = () => {
    if (shown !== '') out.write(`\r${' '.repeat(shown.length)}\r`)
    shown = ''
  }
  return {
    show: (share, what) => {
      const percent = Math.floor(100 * share)
      const seconds = ((nowMs() - beganAtMs) / 1_000).toFixed(0)
      if (out.isTTY) {
        const nFull = Math.floor(BAR_CHARACTERS * share)
        const line = `${'#'.repeat(nFull)}${'.'.repeat(BAR_CHARACTERS - nFull)} ${percent} %  ${what}  ${seconds} s`
        if (line === shown) return
        clear()
        out.write(line)
        shown = line
      } else if (percent >= percentSaid + LINE_EVERY_PERCENT) {
        out.write(`${percent} %  ${what}  ${seconds} s\n`)
        percentSaid = percent - (percent % LINE_EVERY_PERCENT)
      }
    },
    say: (line) => {
      clear()
      out.write(`${line}\n`)
    },
    end: () => {
      if (shown !== '') out.write('\n')
      shown = ''
    },
  }
}
