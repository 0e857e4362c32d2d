/** Whether something has been so for a while: what passes in the blink of an eye needs no words. */

import { useEffect, useState } from 'react'

export function useLongEnough(isSo: boolean, ms: number): boolean {
  const [isLong, setIsLong] = useState(false)
  useEffect(() => {
    if (!isSo) {
      setIsLong(false)
      return
    }
    const timer = setTimeout(() => setIsLong(true), ms)
    return () => clearTimeout(timer)
  }, [isSo, ms])
  return isSo && isLong
}
