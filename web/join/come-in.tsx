/** The route of students: the come-in page, or what the app shows to a student who has a seat. */

import { type ReactNode, useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import { useLocation } from 'wouter'
import { benchActs, useBench } from '../live/bench-live.ts'
import { Waiting } from '../parts/waiting.tsx'
import { ComeInScreen } from './come-in-screen.tsx'
import { keepCodeLetters } from './typed-code.ts'

export default function ComeIn({ codeInAddress, whenSeated }: { codeInAddress: string | null; whenSeated: ReactNode }) {
  const { t } = useTranslation()
  const [, goTo] = useLocation()
  const { status, view } = useBench()
  const hasSeat = status === 'seated' || status === 'away' || status === 'gone'
  // A seat in one room does not keep a child from scanning the code of another.
  const wantsAnotherRoom =
    codeInAddress !== null && view !== null && view.room.code !== keepCodeLetters(codeInAddress) && status === 'seated'

  useEffect(() => {
    if (hasSeat && !wantsAnotherRoom && codeInAddress !== null) goTo('/', { replace: true })
  }, [hasSeat, wantsAnotherRoom, codeInAddress, goTo])

  if (status === 'connecting') return <Waiting words={t('common:connecting')} />
  if (hasSeat && !wantsAnotherRoom) return whenSeated
  return <ComeInScreen codeInAddress={codeInAddress} join={benchActs.join} />
}
