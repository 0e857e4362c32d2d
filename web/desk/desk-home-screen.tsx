/** The desk before a room: one thing to press, and the rooms that are open already. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskHome, Shelf } from '../../engine/wire/views.ts'
import type { OpenedTakeHome, TakeHomeWish } from '../live/open-take-home.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Icon } from '../ui/icons.tsx'
import { Notice } from '../ui/notice.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import { ClassRosters } from './classes/class-rosters.tsx'
import styles from './desk-home-screen.module.css'
import type { HomePlace } from './place/desk-place.ts'
import { places } from './place/use-desk-place.ts'
import { LessonPlans } from './plans/lesson-plans.tsx'
import rowStyles from './shelf/rows.module.css'
import { BeginTakeHome } from './take-home/begin-take-home.tsx'

type DeskHomeScreenProps = {
  place: HomePlace
  /** Another value is another entry of the history. */
  placeKey: number
  home: DeskHome
  shelf: Shelf
  nowMs: number
  refusal: Refusal | null
  acts: {
    keepPlan: (plan: LessonPlan, planId: string | null) => Promise<string | null>
    removePlan: (planId: string) => Promise<unknown>
    keepRoster: (roster: ClassRoster, rosterId: string | null) => Promise<string | null>
    removeRoster: (rosterId: string) => Promise<unknown>
    openRoom: () => Promise<unknown>
    followPlan: (plan: LessonPlan) => Promise<unknown>
    newTakeHome: (wish: TakeHomeWish) => Promise<OpenedTakeHome>
  }
}

/** What the first page of the desk shows. */
const FACES = ['rooms', 'plans', 'classes'] as const

export function DeskHomeScreen({ place, placeKey, home, shelf, nowMs, refusal, acts }: DeskHomeScreenProps) {
  const { t } = useTranslation()
  const [isOpening, setIsOpening] = useState(false)
  const face = faceOf(place)
  const open = async () => {
    if (isOpening) return
    setIsOpening(true)
    await acts.openRoom()
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
          onChoose={(kind) => places.goTo({ kind })}
        />
        <ThemeChoice />
      </header>
      <Notice>{refusal !== null && refusalWords(t, refusal)}</Notice>
      {face === 'plans' && (
        <LessonPlans
          plans={shelf.plans}
          open={place.kind === 'plan' ? place : null}
          openKey={placeKey}
          onOpen={places.goTo}
          onChangeOpen={places.put}
          onLeave={() => places.leaveTo({ kind: 'plans' })}
          onKept={(kept) => places.leaveKept(place, kept, { kind: 'plans' })}
          onKeep={acts.keepPlan}
          onRemove={(planId) => void acts.removePlan(planId)}
          onUse={(plan) => void acts.followPlan(plan)}
        />
      )}
      {face === 'classes' && (
        <ClassRosters
          classes={shelf.rosters.map(({ rosterId, roster }) => ({ classId: rosterId, ...roster }))}
          open={place.kind === 'class' ? place : null}
          openKey={placeKey}
          onOpen={places.goTo}
          onLeave={(asks) => places.leaveTo({ kind: 'classes' }, { asks })}
          onKept={(kept) => places.leaveKept(place, kept, { kind: 'classes' })}
          onKeep={acts.keepRoster}
          onRemove={(rosterId) => void acts.removeRoster(rosterId)}
        />
      )}
      {face === 'rooms' && (
        <>
          <section className={styles.open}>
            <Button look="accent" size="large" icon="plus" aria-disabled={isOpening} onClick={() => void open()}>
              {t(isOpening ? 'desk:home.opening' : 'desk:home.openRoom')}
            </Button>
            <p>{t('desk:home.sentence')}</p>
            <BeginTakeHome plans={shelf.plans} nowMs={nowMs} onOpen={acts.newTakeHome} />
          </section>
          <section>
            <h2>{t('desk:home.rooms')}</h2>
            {home.rooms.length === 0 ? (
              <p className={rowStyles.none}>{t('desk:home.noRooms')}</p>
            ) : (
              <ul className={rowStyles.rows}>
                {home.rooms.map((room) => (
                  <li key={room.id}>
                    <OpenRoom room={room} onGo={() => places.goTo({ kind: 'room', roomId: room.id })} />
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

function faceOf({ kind }: HomePlace): (typeof FACES)[number] {
  if (kind === 'plan') return 'plans'
  return kind === 'class' ? 'classes' : kind
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
