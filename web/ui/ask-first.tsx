/** Asks before something is done that cannot be taken back. The first button, and Escape, leave all as it is. */

import type { ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from './button.tsx'
import { Sheet } from './sheet.tsx'

type AskFirstProps = { title: string; sentence: ReactNode; yes: string; onYes: () => void; onClose: () => void }

export function AskFirst({ title, sentence, yes, onYes, onClose }: AskFirstProps) {
  const { t } = useTranslation()
  const answers = (
    <>
      <Button look="quiet" onClick={onClose}>
        {t('common:cancel')}
      </Button>
      <Button
        onClick={() => {
          onYes()
          onClose()
        }}
      >
        {yes}
      </Button>
    </>
  )
  return (
    <Sheet title={title} onClose={onClose} answers={answers}>
      <p>{sentence}</p>
    </Sheet>
  )
}
