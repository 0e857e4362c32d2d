/** The route of students: the come-in page, or what the app shows to a student who has a seat. */

import { type ReactNode, useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import { useLocation } from 'wouter'
import { beginBench, benchActs, useBench } from '../live/bench-live.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { AtTheDoor } from './at-the-door.tsx'
import { ComeInScreen } from './come-in-screen.tsx'
import { keepCodeLetters } from './typed-code.ts'

type ComeInProps = {
  /** The code of the address, when the page was opened by a QR code or a link. */
  codeInAddress: string | null
  whenSeated: ReactNode
}

export default function ComeIn({ codeInAddress, whenSeated }: ComeInProps) {
  const { t } = useTranslation()
  const [, goTo] = useLocation()
  const { status, outOfDate, turnedAway, lastCode } = useBench()
  const isSeated = status === 'seated' || status === 'away' || status === 'gone'

  useEffect(() => beginBench(codeInAddress === null ? null : keepCodeLetters(codeInAddress)), [codeInAddress])
  useEffect(() => {
    // Once inside, the address is the plain one again: what is loaded anew is the seat, not the code.
    if (isSeated && codeInAddress !== null) goTo('/', { replace: true })
  }, [isSeated, codeInAddress, goTo])

  if (isSeated) return whenSeated
  return (
    <>
      <AwayLine away={false} outOfDate={outOfDate} />
      {status === 'connecting' && <Waiting words={t('common:connecting')} />}
      {status === 'waiting' && <AtTheDoor onGiveUp={benchActs.giveUp} />}
      {status === 'seatless' && (
        <ComeInScreen
          codeInAddress={codeInAddress ?? lastCode}
          askDoor={benchActs.askDoor}
          join={benchActs.join}
          turnedAway={turnedAway}
        />
      )}
    </>
  )
}
