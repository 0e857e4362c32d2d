import { describe, expect, test } from 'vitest'
import { startProgressBar } from '../../../server/search/progress-bar.ts'

function aBar(isTTY: boolean) {
  let [text, nowMs] = ['', 5_000]
  const out = {
    isTTY,
    write: (more: string) => {
      text += more
    },
  }
  const bar = startProgressBar(out, () => nowMs)
  const showAt = (afterMs: number, share: number, what: string) => {
    nowMs = 5_000 + afterMs
    bar.show(share, what)
  }
  return { bar, showAt, written: () => text }
}

describe('the progress bar', () => {
  test('[SE14] without a terminal there is a plain line for each tenth, with what is done and the seconds', () => {
    const { showAt, bar, written } = aBar(false)
    showAt(0, 0, 'stage 1')
    for (let percent = 1; percent <= 25; percent++) showAt(percent * 1_000, percent / 100, 'stage 2')
    bar.say('A part is damaged.')
    showAt(40_000, 1, 'done')
    bar.end()
    expect(written()).toBe(
      '0 %  stage 1  0 s\n10 %  stage 2  10 s\n20 %  stage 2  20 s\nA part is damaged.\n100 %  done  40 s\n',
    )
  })

  test('[SE14] on a terminal one line is written over and over, and ends when the work does', () => {
    const { showAt, bar, written } = aBar(true)
    showAt(0, 0, 'stage 1')
    showAt(1_000, 0.5, 'stage 2')
    showAt(1_000, 0.5, 'stage 2')
    bar.end()
    const [first, second] = [
      `${'.'.repeat(30)} 0 %  stage 1  0 s`,
      `${'#'.repeat(15)}${'.'.repeat(15)} 50 %  stage 2  1 s`,
    ]
    expect(written()).toBe(`${first}\r${' '.repeat(first.length)}\r${second}\n`)
  })
})
