/** The link of the projector's board: opened beside the desk, or copied to another computer. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { copyText } from '../../ui/copy-text.ts'
import styles from './board-link.module.css'

type Copied = 'not-yet' | 'copied' | 'by-hand'

export function BoardLink({ viewerKey, address }: { viewerKey: string; address: string | undefined }) {
  const { t } = useTranslation()
  const fieldId = useId()
  const [copied, setCopied] = useState<Copied>('not-yet')
  const path = `/view#${viewerKey}`
  // Another computer cannot reach this one as "localhost".
  const { protocol, host, hostname } = window.location
  const isOnlyHere = hostname === 'localhost' || hostname === '127.0.0.1' || hostname === '[::1]'
  const link = `${protocol}//${isOnlyHere ? (address ?? host) : host}${path}`
  const copy = async () => setCopied((await copyText(link)) ? 'copied' : 'by-hand')
  return (
    <div className={styles.link}>
      <ButtonLink href={path} icon="projector">
        {t('desk:side.openBoard')}
      </ButtonLink>
      <Button look="quiet" icon={copied === 'copied' ? 'tick' : 'copy'} onClick={() => void copy()}>
        {t(copied === 'copied' ? 'desk:side.copied' : 'desk:side.copyLink')}
      </Button>
      {copied === 'by-hand' && (
        <div className={styles.byHand}>
          <label htmlFor={fieldId}>{t('desk:side.copyByHand')}</label>
          <input id={fieldId} readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
        </div>
      )}
      <span className="visually-hidden" role="status">
        {copied === 'copied' ? t('desk:side.copied') : ''}
      </span>
    </div>
  )
}
