/** The route of the projector: takes the viewer's key out of the address, then shows the room that it opens. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import { enterAsViewer, useBoard } from '../live/board-live.ts'
import { useServerNow } from '../live/server-clock.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { BoardScreen } from './board-screen.tsx'
import styles from './no-such-room.module.css'
import { keepViewerKey } from './viewer-key.ts'

export default function Board() {
  const { t } = useTranslation()
  const { status, view, outOfDate } = useBoard()
  const nowMs = useServerNow()
  useEffect(() => {
    const key = keepViewerKey()
    if (key !== null) enterAsViewer(key)
  }, [])
  // A closed room that has had a round still shows how it ended; one without has nothing to show.
  if (status === 'no-such-room' || (view?.room.closed === true && view.round === null)) {
    return (
      <main className={styles.page}>
        <h1>{t('board:noSuchRoom.title')}</h1>
        <p>{t('board:noSuchRoom.sentence')}</p>
      </main>
    )
  }
  if (view === null) return <Waiting words={t('common:connecting')} />
  return (
    <>
      <BoardScreen view={view} nowMs={nowMs} />
      <AwayLine away={status === 'away'} outOfDate={outOfDate} />
    </>
  )
}
