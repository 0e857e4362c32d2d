/** What the door of a room asks for: looked at as soon as the code is whole. */

import { useCallback, useEffect, useState } from 'react'
import type { Answer } from '../../engine/wire/from-browser.ts'
import type { Door } from '../../engine/wire/views.ts'

/** @returns the door of the room with this code; null without a code, and when nobody answers. A wrong code is told on going in. */
export function useDoor(code: string | null, askDoor: (code: string) => Promise<Answer<Door>>) {
  const [door, setDoor] = useState<Door | null>(null)
  const [nLooks, setLooks] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `nLooks` asks again though nothing else has changed.
  useEffect(() => {
    if (code === null) {
      setDoor(null)
      return
    }
    let isOld = false
    void askDoor(code).then((answer) => {
      if (!isOld) setDoor(answer.ok ? answer.value : null)
    })
    return () => {
      isOld = true
    }
  }, [code, askDoor, nLooks])
  const lookAgain = useCallback(() => setLooks((n) => n + 1), [])
  return { door, lookAgain }
}
