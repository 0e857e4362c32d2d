/** Opens the desk with the one-time link. The key leaves the address bar before anything else happens. */

import { useEffect, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { useLocation } from 'wouter'
import { deskActs } from '../live/desk-live.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Waiting } from '../parts/waiting.tsx'
import { SignedOut } from './signed-out.tsx'

export default function EnterDesk() {
  const { t } = useTranslation()
  const [, goTo] = useLocation()
  const [reason, setReason] = useState<string | null>(null)
  const isTried = useRef(false)

  useEffect(() => {
    // The link works once, so it is tried once, however often the effect runs.
    if (isTried.current) return
    isTried.current = true
    const key = window.location.hash.slice(1)
    window.history.replaceState(window.history.state, '', '/desk/enter')
    if (key === '') {
      goTo('/desk', { replace: true })
      return
    }
    void deskActs.redeemLink(key).then((refusal) => {
      // A fresh page: its connection carries the session from the first handshake on. Whoever opens the link once more is
      // often signed in already, and the desk itself says what to do when not.
      if (refusal === null || refusal.code === 'desk/link-used') window.location.replace('/desk')
      else setReason(refusalWords(t, refusal))
    })
  }, [goTo, t])

  return reason === null ? <Waiting words={t('desk:entering')} /> : <SignedOut reason={reason} />
}
