/** A sheet that lies over the page until it is answered: the browser's own modal dialog, so focus and Escape are its work. */

import { type ReactNode, useId, useLayoutEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from './button.tsx'
import { classNames } from './class-names.ts'
import styles from './sheet.module.css'

type SheetProps = {
  title: string
  onClose: () => void
  children: ReactNode
  /** The answers, at the lower edge. Without any the sheet has a close button. */
  answers?: ReactNode
  /** Fills the screen, for what a projector shows. The title is then heard, not seen. */
  full?: boolean
}

/** A finger that presses twice opens the sheet, and must not put it away with the second press. */
const DOUBLE_PRESS_MS = 400

/** Drawn only while it is open: `{open && <Sheet ... />}`. */
export function Sheet({ title, onClose, children, answers, full = false }: SheetProps) {
  const { t } = useTranslation()
  const titleId = useId()
  const dialog = useRef<HTMLDialogElement>(null)
  const openedAtMs = useRef(0)
  // Closed while it still stands in the page: only then does the browser give the focus back.
  useLayoutEffect(() => {
    const shown = dialog.current
    if (shown !== null && !shown.open) shown.showModal()
    openedAtMs.current = performance.now()
    return () => shown?.close()
  }, [])
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: pressing beside the sheet only doubles Escape, which the dialog has.
    <dialog
      ref={dialog}
      className={classNames(styles.sheet, full && styles.full)}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
      onClick={(event) => {
        const isSecondPress = performance.now() - openedAtMs.current < DOUBLE_PRESS_MS
        if (event.target === dialog.current && !isSecondPress) onClose()
      }}
    >
      <div className={styles.inside}>
        <h2 id={titleId} className={full ? 'visually-hidden' : undefined}>
          {title}
        </h2>
        {children}
        <div className={styles.answers}>
          {answers ?? (
            <Button icon="cross" onClick={onClose}>
              {t('common:close')}
            </Button>
          )}
        </div>
      </div>
    </dialog>
  )
}
