/** A button that copies a link; where the browser does not let a page copy, the link is shown to be copied by hand. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from '../../ui/button.tsx'
import { copyText } from '../../ui/copy-text.ts'
import styles from './board-link.module.css'

type Copied = 'not-yet' | 'copied' | 'by-hand'

export function CopyLink({ link, label }: { readonly link: string; readonly label: string }) {
  const { t } = useTranslation()
  const fieldId = useId()
  const [copied, setCopied] = useState<Copied>('not-yet')
  const copy = async () => setCopied((await copyText(link)) ? 'copied' : 'by-hand')
  return (
    <>
      <Button look="quiet" icon={copied === 'copied' ? 'tick' : 'copy'} onClick={() => void copy()}>
        {copied === 'copied' ? t('desk:side.copied') : label}
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
    </>
  )
}
