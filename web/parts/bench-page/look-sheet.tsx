/** How a child likes the bench: stickers, page, clock, keyboard. Each choice holds at once and is kept in this browser. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { MARK_STYLES } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Sheet } from '../../ui/sheet.tsx'
import { THEMES, useTheme } from '../../ui/theme.ts'
import { TickBox } from '../../ui/tick-box.tsx'
import type { BenchSettings } from './bench-settings.ts'
import styles from './look-sheet.module.css'
import { ShortcutMap } from './shortcut-map.tsx'

type LookSheetProps = {
  readonly liked: BenchSettings
  readonly onChange: (change: Partial<BenchSettings>) => void
  /** Null where there is no room to leave. */
  readonly onLeave: (() => void) | null
  /** Whether hints can be asked for here. */
  readonly hints?: boolean
  /** Whether a clock runs that can be hidden. */
  readonly clock?: boolean
  /** How long a message takes to the server and back, in milliseconds; null while that is not known, or where there is none. */
  readonly delayMs?: number | null
  readonly onClose: () => void
}

export function LookSheet(props: LookSheetProps) {
  const { liked, onChange, onLeave, hints = false, clock = true, delayMs = null, onClose } = props
  const { t } = useTranslation()
  const [theme, chooseTheme] = useTheme()
  return (
    <Sheet title={t('bench:look.title')} onClose={onClose}>
      <SegmentedChoice
        legend={t('bench:look.stickers')}
        segments={MARK_STYLES.map((value) => ({ value, label: t(`bench:look.${value}`) }))}
        value={liked.marks}
        onChoose={(marks) => onChange({ marks })}
      />
      <SegmentedChoice
        legend={t('bench:look.theme')}
        segments={THEMES.map((value) => ({ value, label: t(`common:theme.${value}`) }))}
        value={theme}
        onChoose={chooseTheme}
      />
      <div>
        {clock && (
          <TickBox checked={liked.showClock} onChange={(showClock) => onChange({ showClock })}>
            {t('bench:look.showClock')}
          </TickBox>
        )}
        <TickBox checked={liked.cubeInWords} onChange={(cubeInWords) => onChange({ cubeInWords })}>
          {t('bench:look.cubeInWords')}
        </TickBox>
        <TickBox checked={liked.shortcuts} onChange={(shortcuts) => onChange({ shortcuts })}>
          {t('bench:look.shortcuts')}
        </TickBox>
      </div>
      {liked.shortcuts && (
        <details className={styles.map}>
          <summary>{t('bench:look.map')}</summary>
          <ShortcutMap hints={hints} />
        </details>
      )}
      {delayMs !== null && <p className={styles.delay}>{t('bench:look.delay', { ms: Math.round(delayMs) })}</p>}
      {onLeave !== null && <LeaveRoom onLeave={onLeave} />}
    </Sheet>
  )
}

/** Leaving gives the seat up, so it asks once. */
function LeaveRoom({ onLeave }: { onLeave: () => void }) {
  const { t } = useTranslation()
  const [asking, setAsking] = useState(false)
  if (!asking) {
    return (
      <div className={styles.leave}>
        <Button look="quiet" onClick={() => setAsking(true)}>
          {t('bench:look.leave')}
        </Button>
      </div>
    )
  }
  return (
    <div className={styles.leave}>
      <p>{t('bench:look.leaveSure')}</p>
      <Button onClick={() => setAsking(false)}>{t('bench:look.keep')}</Button>
      <Button onClick={onLeave}>{t('bench:look.leaveNow')}</Button>
    </div>
  )
}
