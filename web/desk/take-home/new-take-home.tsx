/** Opens another room, to take home: a few messages one after the other. Should one be refused, it is said what is left. */

import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { OpenedTakeHome, TakeHomeWish } from '../../live/open-take-home.ts'
import { refusalWords } from '../../parts/refusal-words.ts'
import { Notice } from '../../ui/notice.tsx'
import { TakeHomeForm } from './take-home-form.tsx'

type NewTakeHomeProps = Omit<TakeHomeWish, 'deadlineMs'> & {
  readonly nowMs: number
  readonly children: ReactNode
  readonly onOpen: (wish: TakeHomeWish) => Promise<OpenedTakeHome>
}

export function NewTakeHome({ plan, rounds, entry, nowMs, children, onOpen }: NewTakeHomeProps) {
  const { t } = useTranslation()
  const [isOpening, setIsOpening] = useState(false)
  const [failed, setFailed] = useState<Extract<OpenedTakeHome, { refusal: unknown }> | null>(null)
  const open = async (deadlineMs: number) => {
    setIsOpening(true)
    setFailed(null)
    const opened = await onOpen({ plan, rounds, entry, deadlineMs })
    setIsOpening(false)
    if ('refusal' in opened) setFailed(opened)
  }
  return (
    <div>
      <TakeHomeForm
        nRounds={rounds.length}
        nowMs={nowMs}
        open={t(isOpening ? 'desk:takeHome.opening' : 'desk:takeHome.openNew')}
        isBusy={isOpening}
        onOpen={(deadlineMs) => void open(deadlineMs)}
      >
        {children}
      </TakeHomeForm>
      <Notice>
        {failed !== null &&
          t(failed.leavesARoom ? 'desk:takeHome.failedHalfWay' : 'desk:takeHome.failed', {
            why: refusalWords(t, failed.refusal),
          })}
      </Notice>
    </div>
  )
}
