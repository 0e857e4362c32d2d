/**
 * The wall: every cube of the class, live, on one squared sheet. What needs a teacher stands in the upper right corner of
 * each square; the line above counts the signs and shows only those students when pressed. Large rooms have pages.
 */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import { nStagesIn } from '../../../engine/method/stages.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import { Sign } from '../../ui/signs.tsx'
import styles from './wall.module.css'
import { WallSheet } from './wall-sheet.tsx'
import { WallSquare } from './wall-square.tsx'
import { countSign, type StudentState, WALL_SIGNS, type WallSign, wallPages } from './wall-students.ts'

type WallProps = {
  readonly round: DeskView['round']
  readonly students: readonly StudentState[]
  readonly chosen: SeatId | null
  readonly onChoose: (id: SeatId) => void
}

export function Wall({ round, students, chosen, onChoose }: WallProps) {
  const { t } = useTranslation()
  const [only, setOnly] = useState<WallSign | null>(null)
  const [wishedPage, setPage] = useState(0)
  const shown = only === null ? students : students.filter((student) => student.signs.includes(only))
  const pages = wallPages(shown)
  const page = Math.min(wishedPage, pages.length - 1)
  const nStages = round === null ? 1 : nStagesIn(round.settings)
  const start = round === null || round.clock.phase === 'void' ? null : round.start
  return (
    <section className={styles.wall} aria-label={t('desk:wall.title')}>
      <div className={styles.counts}>
        {WALL_SIGNS.map((sign) => (
          <button
            key={sign}
            type="button"
            className={styles.count}
            aria-pressed={only === sign}
            onClick={() => setOnly(only === sign ? null : sign)}
          >
            <Sign of={sign} />
            <b>{countSign(students, sign)}</b>
            {t(`common:sign.${sign}`)}
          </button>
        ))}
        <p className={styles.all}>
          <b>{students.filter((student) => student.seat.here).length}</b> {t('desk:wall.here')}
        </p>
      </div>
      {pages.length > 1 && (
        <nav className={styles.pages} aria-label={t('desk:wall.pages')}>
          <Button look="quiet" icon="back" aria-disabled={page === 0} onClick={() => setPage(Math.max(0, page - 1))}>
            {t('desk:wall.pageBefore')}
          </Button>
          <p>{t('desk:wall.page', pageWords(pages[page], page, pages.length))}</p>
          <Button
            look="quiet"
            icon="onward"
            aria-disabled={page === pages.length - 1}
            onClick={() => setPage(Math.min(pages.length - 1, page + 1))}
          >
            {t('desk:wall.pageNext')}
          </Button>
        </nav>
      )}
      {shown.length === 0 ? (
        <p className={styles.none}>{t(students.length === 0 ? 'desk:wall.empty' : 'desk:wall.noneOfThese')}</p>
      ) : (
        <WallSheet students={pages[page]}>
          {pages[page].map((student) => (
            <WallSquare
              key={student.seat.seatId}
              student={student}
              start={start}
              baseColour={round?.settings.baseColour ?? 'white'}
              nStages={nStages}
              isChosen={chosen === student.seat.seatId}
              onChoose={onChoose}
            />
          ))}
        </WallSheet>
      )}
    </section>
  )
}

function pageWords(students: readonly StudentState[], page: number, nPages: number) {
  return { first: students[0].seat.name, last: students[students.length - 1].seat.name, page: page + 1, nPages }
}
