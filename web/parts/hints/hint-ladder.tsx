/**
 * The hint ladder on a bench: a button that says beforehand what a hint costs, and the rungs that were asked for, one under
 * the other: what to look for, how to hold, what to do. A hint stays until the step that it tells of is done.
 *
 * It asks nobody: it works the words out from the position and reports the wish through `onAsk`. The round keeps what was
 * given. Where there is little room, a hint takes the place of `children`, which come back when the step is done.
 */

import { type MouseEvent, type ReactNode, type Ref, useMemo, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import type { SequenceBook } from '../../../engine/method/sequence-book.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { hintFor } from '../../../engine/method/way/hint-ladder.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import styles from './hint-ladder.module.css'
import { HintPicture } from './hint-picture.tsx'
import { hintWords } from './hint-words.ts'
import { nextHintLevel, type ShownHint, shownHint, toldAt } from './shown-hint.ts'
import { useScrolls } from './use-scrolls.ts'

/** A hint that the teacher sent, where the cube stood when it was first shown, and what puts it away. */
export type TeacherHint = ShownHint & { readonly onPutAway: () => void }

export type HintLadderProps = {
  /** Where the cube stands now. A new try is another ladder: give it another `key`. */
  readonly position: CubePosition
  readonly span: StageSpan
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** The highest rung that may be asked for; 0 draws nothing but the children. */
  readonly levelMax: 0 | HintLevel
  /** Counted turns that one hint costs; 0 is free. */
  readonly cost: number
  /** Levels of the hints given so far at this standing position. */
  readonly given: readonly HintLevel[]
  /** What stands there, where the caller knows it; else the ladder follows it from one position to the next. */
  readonly shown?: ShownHint | null
  readonly onAsk: (level: HintLevel) => void
  /** Whether hints may be asked for now: not in a pause, nor behind the goal. */
  readonly canAsk: boolean
  /** A clock has the upper right corner of a wide screen: the button then stands under the head, and a hint in its place. */
  readonly hasClock?: boolean
  /** It stands in a page that scrolls, under what is written there, and no key of the keyboard asks for it. */
  readonly inText?: boolean
  /** The book that the class is taught from. */
  readonly book?: SequenceBook
  /** What the teacher has sent: it costs nothing, and takes the place of an own hint. */
  readonly fromTeacher?: TeacherHint | null
  /** For the shortcut: pressing it asks. */
  readonly button?: Ref<HTMLButtonElement>
  /** The head of the bench. */
  readonly children?: ReactNode
}

export function HintLadder(props: HintLadderProps) {
  const { position, span, levelMax, given, canAsk, hasClock = false, book = LESSON_BOOK, children } = props
  const { fromTeacher = null, inText = false } = props
  const { t } = useTranslation()
  const lesson = useMemo(() => ({ span, book }), [span, book])
  const kept = useRef<ShownHint | null>(null)
  const followed = useMemo(
    () => (props.shown === undefined ? shownHint(kept.current, position, given, lesson) : null),
    [props.shown, position, given, lesson],
  )
  kept.current = followed
  const shown = props.shown ?? followed
  const taught = useMemo(
    () => (fromTeacher === null ? null : shownHint(fromTeacher, position, [], lesson)),
    [fromTeacher, position, lesson],
  )
  const told = taught ?? shown
  const next = useMemo(
    () => (canAsk ? nextHintLevel(told, position, levelMax, lesson) : null),
    [canAsk, told, position, levelMax, lesson],
  )
  if (levelMax === 0 && taught === null) return children
  return (
    <>
      <div className={classNames(styles.others, told !== null && styles.makeRoom)}>{children}</div>
      <section
        className={classNames(
          styles.ladder,
          hasClock && styles.underHead,
          inText && styles.inText,
          told !== null && styles.open,
        )}
        tabIndex={-1}
        aria-label={t('hints:label')}
        data-takes-height={told !== null ? 'hint' : undefined}
      >
        {taught !== null && fromTeacher !== null && <FromTeacher onPutAway={fromTeacher.onPutAway} />}
        <Rungs {...props} shown={told} lesson={lesson} />
        {levelMax > 0 && (next !== null || told === null) && <AskButton {...props} next={next} />}
      </section>
    </>
  )
}

function FromTeacher({ onPutAway }: Pick<TeacherHint, 'onPutAway'>) {
  const { t } = useTranslation()
  return (
    <p className={styles.from}>
      <b>{t('hints:fromTeacher')}</b>
      <Button look="quiet" onClick={onPutAway}>
        {t('hints:putAway')}
      </Button>
    </p>
  )
}

type RungsProps = Pick<HintLadderProps, 'position' | 'baseColour' | 'marks'> & {
  readonly shown: ShownHint | null
  readonly lesson: { readonly span: StageSpan; readonly book: SequenceBook }
}

/** Always in the page, so that what comes in is heard. */
function Rungs({ shown, position, baseColour, marks, lesson }: RungsProps) {
  const { t } = useTranslation()
  const at = useMemo(() => (shown === null ? null : toldAt(shown, position, lesson)), [shown, position, lesson])
  const hint = useMemo(() => (at === null ? null : hintFor(at, lesson.span, 1, lesson.book)), [at, lesson])
  const [box, scrolls] = useScrolls<HTMLDivElement>()
  return (
    <div
      ref={box}
      className={at === null ? 'visually-hidden' : styles.told}
      {...(scrolls ? { tabIndex: 0, role: 'group', 'aria-label': t('hints:label') } : {})}
    >
      {at !== null && hint !== null && (
        <div className={styles.picture}>
          <HintPicture position={at} about={hint} baseColour={baseColour} marks={marks} />
        </div>
      )}
      <ol className={styles.rungs} aria-live="polite">
        {shown !== null &&
          at !== null &&
          hintWords(t, at, shown.level, baseColour, lesson).map((rung) => (
            <li key={rung.kind}>
              <p>{rung.words}</p>
              {rung.why !== null && <p className={styles.why}>{rung.why}</p>}
            </li>
          ))}
      </ol>
    </div>
  )
}

function AskButton(props: HintLadderProps & { readonly next: HintLevel | null }) {
  const { next, cost, levelMax, onAsk, button, inText = false } = props
  const { t } = useTranslation()
  const ask = ({ currentTarget }: MouseEvent<HTMLButtonElement>) => {
    if (next === null) return
    // With the last rung the button goes; whoever stood on it stays with the hint.
    if (next === levelMax && document.activeElement === currentTarget) currentTarget.closest('section')?.focus()
    onAsk(next)
  }
  return (
    <button
      ref={button}
      type="button"
      className={styles.ask}
      aria-disabled={next === null}
      aria-keyshortcuts={inText ? undefined : 'H'}
      onClick={ask}
    >
      <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
        <path d="M12 3.500a6 6 0 0 0-3.600 10.800c.7.600 1.100 1.300 1.100 2.200h5c0-.9.400-1.600 1.100-2.200A6 6 0 0 0 12 3.500zM9.500 20.500h5" />
      </svg>
      <span className={styles.askWords}>
        <b>{t(`hints:ask.${next ?? 1}`)}</b>
        <span className={styles.cost}>{cost === 0 ? t('hints:free') : t('hints:cost', { count: cost })}</span>
      </span>
    </button>
  )
}
