/**
 * Two links: of the projector's board, to be opened beside the desk or shared in a call, and the one by which students come
 * in, for the chat of a call.
 */

import { useTranslation } from 'react-i18next'
import type { RoomCode } from '../../../engine/contest/ids.ts'
import { ButtonLink } from '../../ui/button.tsx'
import styles from './board-link.module.css'
import { CopyLink } from './copy-link.tsx'

type BoardLinkProps = {
  readonly viewerKey: string
  readonly code: RoomCode
  readonly address: string | undefined
}

export function BoardLink({ viewerKey, code, address }: BoardLinkProps) {
  const { t } = useTranslation()
  const path = `/view#${viewerKey}`
  // Another computer cannot reach this one as "localhost".
  const { protocol, host, hostname } = window.location
  const isOnlyHere = hostname === 'localhost' || hostname === '127.0.0.1' || hostname === '[::1]'
  const server = `${protocol}//${isOnlyHere ? (address ?? host) : host}`
  return (
    <div className={styles.link}>
      <ButtonLink href={path} icon="projector">
        {t('desk:side.openBoard')}
      </ButtonLink>
      <CopyLink link={`${server}${path}`} label={t('desk:side.copyLink')} />
      <CopyLink link={`${server}/${code}`} label={t('desk:side.copyComeIn')} />
    </div>
  )
}
