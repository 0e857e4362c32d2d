/** The desk before a room: one thing to press, and the rooms that are open already. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoomId } from '../../engine/contest/ids.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskHome, Shelf } from '../../engine/wire/views.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Icon } from '../ui/icons.tsx'
import { Notice } from '../ui/notice.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import { ClassRosters } from './classes/class-rosters.tsx'
import styles from './desk-home-screen.module.css'
import { LessonPlans } from './plans/lesson-plans.tsx'

type DeskHomeScreenProps = {
  home: DeskHome
  refusal: Refusal | null
  openRoom: () => Promise<unknown>
  watchRoom: (id: RoomId) => void
  shelf: Shelf
  shelfActs: {
    keepPlan: (plan: LessonPlan, planId: string | null) => Promise<unknown>
    removePlan: (planId: string) => Promise<unknown>
    keepRoster: (roster: ClassRoster, rosterId: string | null) => Promise<unknown>
    removeRoster: (rosterId: string) => Promise<unknown>
    followPlan: (plan: LessonPlan) => Promise<unknown>
  }
}

/** What the first page of the desk shows. */
const FACES = ['rooms', 'plans', 'classes'] as const

export function DeskHomeScreen({ home, shelf, refusal, openRoom, watchRoom, shelfActs }: DeskHomeScreenProps) {
  const { t } = useTranslation()
  const [isOpening, setIsOpening] = useState(false)
  const [face, setFace] = useState<(typeof FACES)[number]>('rooms')
  const open = async () => {
    if (isOpening) return
    setIsOpening(true)
    await openRoom()
    setIsOpening(false)
  }
  return (
    <main className={classNames(styles.home, face !== 'rooms' && styles.wide)}>
      <header className={styles.head}>
        <h1>{t('desk:title')}</h1>
        <SegmentedChoice
          legend={t('desk:title')}
          quietLegend
          segments={FACES.map((each) => ({ value: each, label: t(`desk:lesson.${each}`) }))}
          value={face}
          onChoose={setFace}
        />
        <ThemeChoice />
      </header>
      <Notice>{refusal !== null && refusalWords(t, refusal)}</Notice>
      {face === 'plans' && (
        <LessonPlans
          plans={shelf.plans}
          onKeep={(plan, planId) => void shelfActs.keepPlan(plan, planId)}
          onRemove={(planId) => void shelfActs.removePlan(planId)}
          onUse={(plan) => void shelfActs.followPlan(plan)}
        />
      )}
      {face === 'classes' && (
        <ClassRosters
          classes={shelf.rosters.map(({ rosterId, roster }) => ({ classId: rosterId, ...roster }))}
          onKeep={(roster, rosterId) => void shelfActs.keepRoster(roster, rosterId)}
          onRemove={(rosterId) => void shelfActs.removeRoster(rosterId)}
        />
      )}
      {face === 'rooms' && (
        <>
          <section className={styles.open}>
            <Button look="accent" size="large" icon="plus" aria-disabled={isOpening} onClick={() => void open()}>
              {t(isOpening ? 'desk:home.opening' : 'desk:home.openRoom')}
            </Button>
            <p>{t('desk:home.sentence')}</p>
          </section>
          <section>
            <h2>{t('desk:home.rooms')}</h2>
            {home.rooms.length === 0 ? (
              <p className={styles.none}>{t('desk:home.noRooms')}</p>
            ) : (
              <ul className={styles.rooms}>
                {home.rooms.map((room) => (
                  <li key={room.id}>
                    <OpenRoom room={room} onGo={() => watchRoom(room.id)} />
                  </li>
                ))}
              </ul>
            )}
          </section>
        </>
      )}
      <p className={styles.privacy}>{t('desk:home.privacy')}</p>
    </main>
  )
}

function OpenRoom({ room, onGo }: { room: DeskHome['rooms'][number]; onGo: () => void }) {
  const { t, i18n } = useTranslation()
  const time = new Intl.DateTimeFormat(i18n.language, { hour: 'numeric', minute: '2-digit', weekday: 'short' }).format(
    room.openedAtMs,
  )
  const facts = [
    t('common:students', { count: room.nStudents }),
    t('desk:home.roundsPlayed', { count: room.nRounds }),
    room.playing ? t('desk:home.playing') : t('desk:home.openedAt', { time }),
  ]
  return (
    <button
      type="button"
      className={styles.room}
      onClick={onGo}
      aria-label={`${t('desk:home.goTo', { code: room.code })}. ${facts.join(', ')}`}
    >
      <b>{room.code}</b>
      <span>{facts.join(' · ')}</span>
      <Icon of="onward" />
    </button>
  )
}
