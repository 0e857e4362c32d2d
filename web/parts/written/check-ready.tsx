/** Which of three pictures does a hidden side of the cube show? A wrong answer is met kindly and with another question. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { chachaSource, SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { coloursByHomeFace, type MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import styles from './check-ready.module.css'
import { FacePicture } from './face-picture.tsx'
import { type FaceLook, readyQuestion } from './ready-question.ts'

type CheckReadyProps = {
  readonly start: CubePosition
  readonly baseColour: Colour
  readonly marks: MarkStyle
  readonly onReady: () => void
  /** Back to the pictures of all sides. */
  readonly onBack: () => void
}

export function CheckReady({ start, baseColour, marks, onReady, onBack }: CheckReadyProps) {
  const { t } = useTranslation()
  const [question, setQuestion] = useState(() => readyQuestion(start, chance()))
  const [wasWrong, setWasWrong] = useState(false)
  const answer = (index: number) => {
    if (index === question.answer) {
      onReady()
      return
    }
    setWasWrong(true)
    setQuestion(readyQuestion(start, chance(), question.face))
  }
  const colours = coloursByHomeFace(baseColour)
  return (
    <>
      <header className={styles.head}>
        <h2>{t(`written:setup.ask.${question.face}`)}</h2>
        <p>{t(`written:setup.look.${question.face}`)}</p>
      </header>
      <p className={wasWrong ? styles.wrong : undefined} role="status">
        {wasWrong && t('written:setup.wrong')}
      </p>
      <div className={styles.options}>
        {question.options.map((look, index) => (
          <button
            key={look.join()}
            type="button"
            className={styles.option}
            aria-label={t('written:setup.option', { number: index + 1, rows: rowsInWords(look) })}
            onClick={() => answer(index)}
          >
            <FacePicture look={look} baseColour={baseColour} marks={marks} />
          </button>
        ))}
      </div>
      <div className={styles.acts}>
        <Button onClick={onBack}>{t('written:setup.backToPictures')}</Button>
      </div>
    </>
  )

  function rowsInWords(look: FaceLook): string {
    const words = look.map((home) => t(`common:colour.${colours[home]}`))
    return [0, 3, 6]
      .map((row) => t('bench:words.row', { first: words[row], second: words[row + 1], third: words[row + 2] }))
      .join('; ')
  }
}

/** The browser's own chance, which plain HTTP has as well. */
function chance() {
  return chachaSource(crypto.getRandomValues(new Uint8Array(SEED_BYTES)))
}
