/** Words for a screen reader about what changes on the screen: the newest, but never more often than every five seconds. */

import { useEffect, useRef, useState } from 'react'

const EVERY_MS = 5_000

export function LiveWords({ words }: { words: string }) {
  const newest = useRef(words)
  newest.current = words
  const [said, setSaid] = useState('')
  useEffect(() => {
    const timer = setInterval(() => setSaid(newest.current), EVERY_MS)
    return () => clearInterval(timer)
  }, [])
  return (
    <p className="visually-hidden" role="status" aria-live="polite">
      {said}
    </p>
  )
}
