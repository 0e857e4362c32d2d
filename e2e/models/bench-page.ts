/** A student's bench. The cube is read from its words, as somebody who cannot see it would. */

import { expect, type Locator, type Page } from '@playwright/test'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { colourOfFaces } from '../../engine/cube/colour-scheme.ts'
import { type CubePosition, solvedCube } from '../../engine/cube/cube-position.ts'
import { FACES, type Face } from '../../engine/cube/faces.ts'
import { parseTurns } from '../../engine/cube/parse-turns.ts'
import { parseStickers, stickersOf } from '../../engine/cube/stickers.ts'
import { type Turn, turnKind, turnName } from '../../engine/cube/turns.ts'

export class BenchPage {
  readonly page: Page
  readonly pad: Locator
  readonly words: Locator
  readonly leftTrigger: Locator
  readonly rightTrigger: Locator
  readonly reHold: Locator
  readonly takeBack: Locator
  readonly startAgain: Locator
  readonly stuck: Locator
  /** Asks for the next rung, whatever it is called. */
  readonly hint: Locator
  readonly reached: Locator
  readonly ended: Locator
  /** Beside the goal, while the teacher shows it in a round that runs. */
  readonly par: Locator
  /** Beside the own result, when the round is over. */
  readonly parAtTheEnd: Locator

  constructor(page: Page) {
    this.page = page
    this.pad = page.getByRole('region', { name: 'Turn keys' })
    this.words = page.getByRole('region', { name: 'The cube in words' })
    this.leftTrigger = page.getByRole('button', { name: 'Left trigger' })
    this.rightTrigger = page.getByRole('button', { name: 'Right trigger' })
    this.reHold = page.getByRole('button', { name: 'Re-hold', exact: true })
    this.takeBack = page.getByRole('button', { name: 'Take back' })
    this.startAgain = page.getByRole('button', { name: 'Start again' })
    this.stuck = page.getByRole('button', { name: 'I am stuck' })
    this.hint = page
      .getByRole('region', { name: 'Hint' })
      .getByRole('button', { name: /^(Hint|How to hold|What to do)/ })
    this.reached = page.getByText(/Goal reached in \d+ turns?/)
    this.ended = page.getByText('The round is over')
    this.par = page.getByText(/^(Par|Best known) \d+$/)
    this.parAtTheEnd = page.getByText(/^(Par was \d+\.|The best known way takes \d+ turns?\.|You took \d+: no shorter)/)
  }

  /** Waits until the signal has been given and the round can be played. */
  async untilPlayable(): Promise<void> {
    await expect(this.page.getByText(/of 4 top edges show/).first()).toBeAttached()
    await expect(this.key('U')).toHaveAttribute('aria-disabled', 'false')
  }

  key(name: string): Locator {
    return this.pad.getByRole('button', { name: new RegExp(`^${asPrinted(name)}: `) })
  }

  reHoldKey(name: string): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${asPrinted(name)}: re-hold`) })
  }

  /** One key for each turn; re-holds from their own pad, which has quarters only. */
  async tap(turns: readonly Turn[], how: 'click' | 'tap' = 'click'): Promise<void> {
    for (const turn of turns) {
      if (turnKind(turn) === 're-hold') {
        // The pad of re-holds stays open until it is closed.
        if ((await this.reHold.getAttribute('aria-expanded')) !== 'true') await this.reHold[how]()
        const quarter = turnName(turn).replace('2', '')
        for (let nLeft = quarter === turnName(turn) ? 1 : 2; nLeft > 0; nLeft--) await this.reHoldKey(quarter)[how]()
      } else await this.key(turnName(turn))[how]()
    }
  }

  /** The letters of the turns on the keyboard, Shift for the other way, 2 before a letter for half a turn. */
  async type(turns: readonly Turn[]): Promise<void> {
    for (const turn of turns) {
      const [letter, ending] = [turnName(turn)[0], turnName(turn).slice(1)]
      if (ending === '2') await this.page.keyboard.press('2')
      await this.page.keyboard.press(ending === "'" ? `Shift+${letter.toUpperCase()}` : letter.toLowerCase())
    }
  }

  /** The position as the words tell it; fails when they tell none that is legal. */
  async position(): Promise<CubePosition> {
    const colours = colourOfFaces('white')
    const letterOf = Object.fromEntries(FACES.map((face) => [colours[face], face]))
    const rows = await this.words.locator('li').allTextContents()
    const letters = rows.flatMap((row) => row.split(', ').map((colour) => letterOf[colour.trim()]))
    const read = parseStickers(letters.join(''))
    if (!read.ok) throw new Error(`the words tell no legal cube: ${JSON.stringify(read.error)} in ${rows.join(' / ')}`)
    return read.value
  }

  /** A round at home, in the list of its room. */
  roundAtHome(number: number): Locator {
    return this.page.getByRole('listitem').filter({ hasText: `Round ${number} ·` })
  }

  /** Brings a real cube to the start as the page says, up to the question. @returns where it stands then */
  async setUpRealCube(): Promise<CubePosition> {
    const squares = this.page.getByRole('list', { name: 'The turns of the setup' }).getByRole('button')
    await expect(squares.first()).toBeVisible()
    const written = (await squares.allTextContents()).join(' ').replaceAll('’', "'")
    const setup = parseTurns(written)
    if (!setup.ok) throw new Error(`the setup cannot be read: ${written}`)
    const compare = this.page.getByRole('button', { name: 'Compare' })
    const nextTurn = this.page.getByRole('button', { name: 'Next turn' })
    await expect(compare.or(nextTurn)).toBeVisible()
    while (await nextTurn.isVisible()) await nextTurn.click()
    await compare.click()
    await this.page.getByRole('button', { name: 'My cube is ready' }).click()
    return afterTurns(solvedCube(), setup.value)
  }

  /** Looks at the side that is asked for, and taps the picture that shows it. */
  async answerReady(start: CubePosition): Promise<void> {
    const asked = await this.page.getByRole('heading', { name: /^What is / }).textContent()
    const face = FACES.find((each) => asked === ASKED[each])
    if (face === undefined) throw new Error(`unknown question: ${asked}`)
    const colours = colourOfFaces('white')
    const first = FACES.indexOf(face) * 9
    const seen = [...stickersOf(start).subarray(first, first + 9)].map((home) => colours[FACES[home]])
    const rows = [0, 3, 6].map((row) => seen.slice(row, row + 3).join(', ')).join('; ')
    await this.page.getByRole('button', { name: new RegExp(`^Picture \\d: ${rows}$`) }).click()
  }

  get written(): Locator {
    return this.page.getByLabel('Your turns, in order')
  }

  get send(): Locator {
    return this.page.getByRole('button', { name: 'Send', exact: true })
  }

  /** Counted turns as the screen shows them. */
  async expectTurns(turns: number): Promise<void> {
    await expect(this.page.getByText(new RegExp(`^${turns} turns?$`)).first()).toBeVisible()
  }
}

/** How the page asks for a side. */
const ASKED: Readonly<Record<Face, string>> = {
  U: 'What is on the top?',
  R: 'What is on the right?',
  F: 'What is in front?',
  D: 'What is at the bottom?',
  L: 'What is on the left?',
  B: 'What is at the back?',
}

/** The page prints a typographic prime. */
function asPrinted(turnName: string): string {
  return turnName.replace("'", '’')
}
