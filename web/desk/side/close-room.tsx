/** Closes the room, after a question. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoomCode } from '../../../engine/contest/ids.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import styles from './close-room.module.css'

export function CloseRoom({ code, onClose }: { code: RoomCode; onClose: () => void }) {
  const { t } = useTranslation()
  const [asks, setAsks] = useState(false)
  return (
    <div className={styles.close}>
      <Button look="quiet" onClick={() => setAsks(true)}>
        {t('desk:side.close')}
      </Button>
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
