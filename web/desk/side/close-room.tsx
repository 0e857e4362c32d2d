/** Closes the room, after a question. While a round is on it says what to do first. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoomCode } from '../../../engine/contest/ids.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import styles from './close-room.module.css'

type CloseRoomProps = { code: RoomCode; roundIsOn: boolean; onClose: () => void }

export function CloseRoom({ code, roundIsOn, onClose }: CloseRoomProps) {
  const { t } = useTranslation()
  const helpId = useId()
  const [asks, setAsks] = useState(false)
  return (
    <div className={styles.close}>
      <Button
        look="quiet"
        // Still reached by the keyboard, so that the reason is heard.
        aria-disabled={roundIsOn}
        aria-describedby={roundIsOn ? helpId : undefined}
        onClick={() => !roundIsOn && setAsks(true)}
      >
        {t('desk:side.close')}
      </Button>
      {roundIsOn && (
        <p id={helpId} className={styles.help}>
          {t('desk:side.closeRoundIsOn')}
        </p>
      )}
      {asks && (
        <AskFirst
          title={t('desk:side.closeAsk.title', { code })}
          sentence={t('desk:side.closeAsk.sentence')}
          yes={t('desk:side.closeAsk.yes')}
          onYes={onClose}
          onClose={() => setAsks(false)}
        />
      )}
    </div>
  )
}
