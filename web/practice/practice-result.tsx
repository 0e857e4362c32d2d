/**
 * How it went: the own turns, par, and what the lesson would have turned, which is shown on request. It stands where the
 * hints stood; where there is little room it takes the place of `children`.
 */

import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Try } from '../../engine/contest/round-state.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { WayRibbon } from '../parts/ribbon/way-ribbon.tsx'
import { Button } from '../ui/button.tsx'
import { Sheet } from '../ui/sheet.tsx'
import { Sign } from '../ui/signs.tsx'
import styles from './practice-result.module.css'
import type { PracticeSettings } from './practice-settings.ts'

type PracticeResultProps = {
  /** A try that has reached the goal. */
  readonly made: Try
  readonly start: CubePosition
  readonly settings: PracticeSettings
  /** Null while it is not known. */
  readonly par: number | null
  readonly children: ReactNode
}

export function PracticeResult({ made, start, settings: { stage }, par, children }: PracticeResultProps) {
  const { t } = useTranslation()
  const [isOpen, setIsOpen] = useState(false)
  const way = useMemo(() => lessonWay(start, { from: stage, to: stage }), [start, stage])
  const nTurns = countOuterBlockTurns(way)
  const title = t('practice:lessonWay', { count: nTurns })
  return (
    <>
      <div className={styles.others}>{children}</div>
      <section className={styles.result} aria-label={t('practice:result')}>
        <div className={styles.own} role="status">
          <Sign of="reached" className={styles.flag} />
          <div>
            <h2>{t('bench:reached.title', { count: made.turns })}</h2>
            {par !== null && (
              <p>{made.turns <= par ? t('practice:isPar', { par }) : t('practice:par', { count: par })}</p>
            )}
          </div>
        </div>
        <Button onClick={() => setIsOpen(true)}>{title}</Button>
      </section>
      {isOpen && (
        <Sheet title={title} onClose={() => setIsOpen(false)}>
          <FromTheTop />
          <WayRibbon turns={way} nTurns={nTurns} />
          <h3 className={styles.yours}>{t('practice:yours')}</h3>
          <WayRibbon turns={made.standing} nTurns={made.turns} isMade />
        </Sheet>
      )}
    </>
  )
}

/** A sheet opens with the focus on its last button; a long one would show its end first. */
function FromTheTop() {
  const here = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    const frame = requestAnimationFrame(() => here.current?.closest('dialog')?.scrollTo(0, 0))
    return () => cancelAnimationFrame(frame)
  }, [])
  return <span ref={here} />
}
