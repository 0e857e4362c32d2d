/** How the class comes in: address, code, QR code; the same large for the projector; and the lock. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { DeskView } from '../../../engine/wire/views.ts'
import { CodeSquares } from '../../parts/code-squares.tsx'
import { GatherPanel } from '../../parts/gather-panel.tsx'
import { QrPicture } from '../../parts/qr-picture.tsx'
import { comeInAddress } from '../../parts/room-addresses.ts'
import { Button } from '../../ui/button.tsx'
import { Sheet } from '../../ui/sheet.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import type { RoomActs } from '../desk-acts.ts'
import { BoardLink } from './board-link.tsx'
import styles from './let-in.module.css'

type LetInProps = { view: DeskView; acts: RoomActs }

export function LetIn({ view, acts }: LetInProps) {
  const { t } = useTranslation()
  const [isBig, setIsBig] = useState(false)
  const { room } = view
  const [address, ...others] = room.addresses
  return (
    <div className={styles.letIn}>
      <div>
        <p className={styles.label}>{t('desk:side.address')}</p>
        <p className={styles.address}>{address ?? t('desk:side.noAddress')}</p>
        {others.slice(0, 2).map((other) => (
          <p key={other} className={styles.other}>
            {t('desk:side.otherAddress', { address: other })}
          </p>
        ))}
      </div>
      <div className={styles.ways}>
        <div className={styles.typed}>
          <p className={styles.label}>{t('desk:side.code')}</p>
          <CodeSquares code={room.code} />
          <Button icon="large" onClick={() => setIsBig(true)}>
            {t('desk:side.showBig')}
          </Button>
        </div>
        {address !== undefined && (
          <div className={styles.qr}>
            <QrPicture
              address={comeInAddress(address, room.code, window.location.protocol)}
              label={t('join:gather.qrLabel', { address: comeInAddress(address, room.code, window.location.protocol) })}
            />
          </div>
        )}
      </div>
      <BoardLink viewerKey={room.viewerKey} code={room.code} address={address} />
      <TickBox checked={room.locked} onChange={acts.lock}>
        {t('desk:side.lock')} <span className={styles.help}>{t('desk:side.lockHelp')}</span>
      </TickBox>
      {isBig && (
        <Sheet full title={t('desk:side.gatherTitle')} onClose={() => setIsBig(false)}>
          <GatherPanel
            code={room.code}
            addresses={room.addresses}
            names={view.seats.map((seat) => seat.name)}
            locked={room.locked}
            pretend={view.seats.some((seat) => seat.pretend)}
            nextRound={view.nRounds + 1}
          />
        </Sheet>
      )}
    </div>
  )
}
