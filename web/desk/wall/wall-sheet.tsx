/**
 * The squared sheet that the cubes stand on. Where the round fills the screen they are as large as all fit; a narrow or low
 * page scrolls, and its style sheet says how large they are.
 */

import type { CSSProperties, ReactNode } from 'react'
import { useBoxSize } from '../../ui/box-size.ts'
import { wallLayout } from './wall-layout.ts'
import styles from './wall-sheet.module.css'
import type { StudentState } from './wall-students.ts'

type WallSheetProps = {
  readonly students: readonly StudentState[]
  readonly children: ReactNode
}

export function WallSheet({ students, children }: WallSheetProps) {
  const [box, size] = useBoxSize<HTMLDivElement>()
  return (
    <div ref={box} className={styles.room}>
      <ul className={styles.sheet} style={size === null ? undefined : sheetStyle(students, size)}>
        {children}
      </ul>
    </div>
  )
}

function sheetStyle(
  students: readonly StudentState[],
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): CSSProperties {
  const hasMarks = students.some(({ seat }) => seat.late || seat.pretend)
  // One pixel for the line on the left, one for the line at the top.
  const layout = wallLayout(students.length, widthPx - 1, heightPx - 1, hasMarks)
  return {
    '--wall-columns': layout.columns,
    '--wall-cell': `${layout.cellWidthMax}px`,
    '--wall-cube': `${layout.cube}px`,
    '--wall-text': `${layout.text}px`,
  } as CSSProperties
}
