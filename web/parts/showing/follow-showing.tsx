/**
 * What the teacher shows, at a student's own place: it goes as the teacher goes, until the student steps or looks by
 * themselves; one press leads back. Nothing of the student's own try is touched.
 */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { TurnName } from '../../../engine/cube/turns.ts'
import type { Showing, ShowingAt } from '../../../engine/wire/shown.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { CubeFace } from './cube-face.tsx'
import styles from './follow-showing.module.css'
import { PlayKeys } from './play-keys.tsx'
import { ReviewFace } from './review-face.tsx'

type FollowShowingProps = {
  readonly showing: Showing
  readonly marks: MarkStyle
  readonly onHide: () => void
}

export function FollowShowing({ showing, marks, onHide }: FollowShowingProps) {
  const { t } = useTranslation()
  const { shown, version } = showing
  // Another showing begins with the teacher again.
  const [own, setOwn] = useState<{ readonly version: number; readonly at: ShowingAt } | null>(null)
  const isOwn = own !== null && own.version === version
  const at = isOwn ? own.at : showing.at
  const go = (next: Partial<ShowingAt>) => setOwn({ version, at: { ...at, ...next } })
  const turns = shown.kind === 'cube' ? shown.turns : (shown.ways[at.chosen]?.turns ?? NO_TURNS)
  const keys = <PlayKeys turns={turns} at={Math.min(at.at, turns.length)} onGo={(next) => go({ at: next })} />
  return (
    <main className={styles.follow} aria-label={t('showing:follow.title')}>
      <div className={styles.bar}>
        <h1>{t('showing:follow.title')}</h1>
        {isOwn && (
          <>
            <p role="status">{t('showing:follow.ownPace')}</p>
            <Button look="accent" onClick={() => setOwn(null)}>
              {t('showing:follow.back')}
            </Button>
          </>
        )}
        <Button look="quiet" icon="cross" onClick={onHide} className={styles.hide}>
          {t('showing:follow.hide')}
        </Button>
      </div>
      {shown.kind === 'cube' ? (
        <CubeFace shown={shown} at={at} marks={marks}>
          {keys}
        </CubeFace>
      ) : (
        <ReviewFace shown={shown} at={at} marks={marks} onChoose={(chosen, turns) => go({ chosen, at: turns })}>
          {keys}
        </ReviewFace>
      )}
    </main>
  )
}

const NO_TURNS: readonly TurnName[] = []
