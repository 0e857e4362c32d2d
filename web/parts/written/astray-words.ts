/** Where written turns go astray, in words. Pure. */

import type { TFunction } from 'i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { goalProgress } from '../bench-page/goal-progress.ts'
import { progressWords } from '../bench-page/words-for-turns.ts'
import { colourWords } from '../colour-words.ts'
import { writtenTurn } from '../turn-words.ts'
import type { Astray, WrittenMoment } from './where-astray.ts'

/** "Up to turn 7 all was right. After turn 8, R’, the first layer is broken and stays so." */
export function astrayWords(t: TFunction, astray: Astray, span: StageSpan, baseColour: Colour): string {
  const progressAt = ({ position }: WrittenMoment) => progressWords(t, goalProgress(position, span), { baseColour })
  switch (astray.kind) {
    case 'broken': {
      const layer = t(`written:layer.${astray.stage}`, colourWords(t, baseColour))
      const words = { turn: astray.broken.turnNumber, letters: writtenTurn(astray.turn), layer }
      const { turnNumber } = astray.lastWhole
      if (turnNumber === 0) return t('written:brokenAtOnce', words)
      return t('written:broken', { ...words, right: turnNumber })
    }
    case 'was-further':
      return t('written:wasFurther', {
        turn: astray.furthest.turnNumber,
        more: progressAt(astray.furthest),
        now: progressAt(astray.end),
      })
    case 'not-there':
      return progressAt(astray.end)
  }
}
