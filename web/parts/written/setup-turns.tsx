/** The turns of a setup: all of them as squares, the present one large with its picture, and the cube as it stands after it. */

import { useEffect, useMemo, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { type Colour, colourOfFaces } from '../../../engine/cube/colour-scheme.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { type Turn, turnKind } from '../../../engine/cube/turns.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { turnWords, writtenTurn } from '../turn-words.ts'
import { SetupTurnPicture } from './setup-turn-picture.tsx'
import styles from './setup-turns.module.css'

type SetupTurnsProps = {
  readonly setup: readonly Turn[]
  /** How many turns have been made: 0 is the solved cube. */
  readonly at: number
  readonly onStep: (at: number) => void
  readonly onDone: () => void
  readonly baseColour: Colour
  readonly marks: MarkStyle
}

export function SetupTurns({ setup, at, onStep, onDone, baseColour, marks }: SetupTurnsProps) {
  const { t } = useTranslation()
  const stickers = useMemo(() => stickersOf(afterTurns(solvedCube(), setup.slice(0, at))), [setup, at])
  const colours = colourOfFaces(baseColour)
  const isDone = at === setup.length
  const turn = at === 0 ? null : setup[at - 1]
  const hold = {
    base: t(`common:colour.${colours.D}`),
    front: t(`common:colour.${colours.F}`),
  }
  return (
    <>
      <header className={styles.head}>
        <h2>{t('written:setup.title')}</h2>
        <p>{t('written:setup.begin', hold)}</p>
      </header>
      <Squares setup={setup} at={at} onStep={onStep} />
      <div className={styles.now}>
        <div className={styles.turn} aria-live="polite">
          {turn === null ? (
            <p className={styles.words}>{t('written:setup.solved', hold)}</p>
          ) : (
            <>
              <b className={styles.letters}>{writtenTurn(turn)}</b>
              <SetupTurnPicture turn={turn} />
              <p className={styles.words}>
                {turnWords(t, turn)}
                <span>{t('written:setup.turnOf', { turn: at, of: setup.length })}</span>
              </p>
            </>
          )}
        </div>
        <figure className={styles.after}>
          <CubePicture
            stickers={stickers}
            baseColour={baseColour}
            marks={marks}
            label={at === 0 ? t('written:setup.solvedPicture') : t('written:setup.afterPicture', { turn: at })}
          />
          <figcaption>{at === 0 ? t('written:setup.before') : t('written:setup.after')}</figcaption>
        </figure>
      </div>
      <div className={styles.acts}>
        <Button icon="back" aria-disabled={at === 0} onClick={() => at > 0 && onStep(at - 1)}>
          {t('written:setup.back')}
        </Button>
        {isDone ? (
          <Button look="accent" size="large" onClick={onDone}>
            {t('written:setup.compare')}
          </Button>
        ) : (
          <Button look="accent" size="large" onClick={() => onStep(at + 1)}>
            {t('written:setup.next')}
          </Button>
        )}
        {!isDone && (
          <Button look="quiet" onClick={onDone}>
            {t('written:setup.allDone')}
          </Button>
        )}
      </div>
    </>
  )
}

/** Each square leads to its turn. Re-holds are round: they cost no turn and take no square. */
function Squares({ setup, at, onStep }: Pick<SetupTurnsProps, 'setup' | 'at' | 'onStep'>) {
  const { t } = useTranslation()
  const list = useRef<HTMLOListElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each step moves what has to be in sight.
  useEffect(() => {
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
  }, [at])
  return (
    <ol ref={list} className={styles.squares} dir="ltr" aria-label={t('written:setup.turns')}>
      {setup.map((turn, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a turn of a setup is known by its place.
        <li key={index}>
          <button
            type="button"
            className={classNames(
              styles.square,
              turnKind(turn) === 're-hold' && styles.reHold,
              index < at && styles.made,
              index === at - 1 && styles.present,
            )}
            aria-current={index === at - 1 ? 'step' : undefined}
            aria-label={t('written:setup.goTo', { turn: index + 1, words: turnWords(t, turn) })}
            onClick={() => onStep(index + 1)}
          >
            {writtenTurn(turn)}
          </button>
        </li>
      ))}
    </ol>
  )
}
