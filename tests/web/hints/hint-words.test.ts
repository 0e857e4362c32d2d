/** What the rungs say. Rules HT: tests/RULES.md. */

import { beforeAll, describe, expect, test } from 'vitest'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { HINT_LEVELS } from '../../../engine/method/way/hint-level.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'
import { hintWords } from '../../../web/parts/hints/hint-words.ts'
import { stepWords } from '../../../web/parts/lesson/step-words.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'
import { inEnglish } from '../english.ts'
import { asSent } from '../lesson/a-way.ts'

let t: Awaited<ReturnType<typeof inEnglish>>
beforeAll(async () => {
  t = await inEnglish()
})

describe('the rungs', () => {
  test.each(STAGES)('[HT3] at stage %i each rung adds one sentence of the lesson, the last one also why', (stage) => {
    for (let number = 0; number < 12; number++) {
      const span = { from: stage, to: stage }
      const start = drawStart({ span, random: sourceNumbered(number) })
      const told = stepWords(t, asSent(lessonSteps(start, span)[0]), 'white')
      const [one, two, three] = HINT_LEVELS.map((level) =>
        hintWords(t, start, level, 'white', { span, book: LESSON_BOOK }),
      )
      expect(one).toEqual([{ kind: 'look', words: told.look, why: null }])
      expect(two).toEqual([...one, { kind: 'hold', words: told.hold, why: null }])
      expect(three).toEqual([...two, { kind: 'do', words: told.do, why: told.why }])
    }
  })
})
