/**
 * The hint ladder on a bench: a button that says beforehand what a hint costs, and the rungs that were given, one under the
 * other: what to look for, how to hold, what to do. A hint stays until the step that it tells of is done.
 *
 * It asks nobody: it works the words out from the position and reports the wish through `onAsk`. The round keeps what was
 * given. Where there is room the hint stands under `children`, the goal; else it takes their place, and can be put away for
 * them. What was put away is taken out again by the same button, for nothing.
 */

import type { TFunction } from 'i18next'
import { type MouseEvent, type ReactNode, type Ref, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { type CubePosition, cubesEqual } from '../../../engine/cube/cube-position.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import type { SequenceBook } from '../../../engine/method/sequence-book.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { hintFor } from '../../../engine/method/way/hint-ladder.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import type { StepUnderWay } from '../../../engine/method/way/step-under-way.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { writtenTurn } from '../turn-words.ts'
import styles from './hint-ladder.module.css'
import { HintPicture } from './hint-picture.tsx'
import { hintWords } from './hint-words.ts'
import { nextHintLevel, type ShownHint, toldAt } from './shown-hint.ts'
import { useScrolls } from './use-scrolls.ts'

/** Beside a hint that the teacher sent: whether the child has put it away, and what does and undoes that. */
export type TeacherHint = { readonly isAway: boolean; readonly onPutAway: () => void; readonly onTakeOut: () => void }

export type HintLadderProps = {
  /** Where the cube stands now. A new try is another ladder: give it another `key`. */
  readonly position: CubePosition
  /** The step that the child is in the middle of: amid its sequence the hint is about that step, and about what is left of it. */
  readonly begun: StepUnderWay | null
  readonly span: StageSpan
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** The highest rung that may be asked for; 0 draws nothing but the children. */
  readonly levelMax: 0 | HintLevel
  /** Counted turns that one hint costs; 0 is free. */
  readonly cost: number
  /** What stands there: see `hint-of-try.ts`. */
  readonly shown: ShownHint | null
  readonly onAsk: (level: HintLevel) => void
  /** Whether hints may be asked for now: not in a pause, nor behind the goal. */
  readonly canAsk: boolean
  /** A clock has the upper right corner of a wide screen: the button then stands under the head, and a hint in its place. */
  readonly hasClock?: boolean
  /** It stands in a page that scrolls, under what is written there, and no key of the keyboard asks for it. */
  readonly inText?: boolean
  /** The book that the class is taught from. */
  readonly book?: SequenceBook
  /** Where the teacher sent what stands there: it costs nothing, and is put away for good until it is taken out. */
  readonly fromTeacher?: TeacherHint | null
  /** For the shortcut: pressing it asks. */
  readonly button?: Ref<HTMLButtonElement>
  /** The head of the bench. */
  readonly children?: ReactNode
}

export function HintLadder(props: HintLadderProps) {
  const { begun, span, levelMax, shown, canAsk, hasClock = false, inText = false, book = LESSON_BOOK } = props
  const { fromTeacher = null, children } = props
  const position = begun?.position ?? props.position
  const { t } = useTranslation()
  const lesson = useMemo(() => ({ span, book }), [span, book])
  const [putAway, setPutAway] = useState<ShownHint | null>(null)
  const isAway = shown !== null && (fromTeacher?.isAway ?? isSameHint(putAway, shown))
  const told = isAway ? null : shown
  const next = useMemo(
    () => (canAsk ? nextHintLevel(shown, position, levelMax, lesson) : null),
    [canAsk, shown, position, levelMax, lesson],
  )
  if (levelMax === 0 && shown === null) return children
  const takeOut = () => {
    setPutAway(null)
    fromTeacher?.onTakeOut()
  }
  const isOpen = told !== null
  return (
    <div
      className={classNames(styles.both, isOpen && hasClock && styles.oneColumn)}
      data-goal-over-hint={isOpen && hasClock ? true : undefined}
    >
      <div className={classNames(styles.others, isOpen && styles.makeRoom)}>{children}</div>
      <section
        className={classNames(
          styles.ladder,
          hasClock && styles.underHead,
          inText && styles.inText,
          isOpen && styles.open,
        )}
        tabIndex={-1}
        aria-label={t('hints:label')}
        data-takes-height={isOpen ? 'hint' : undefined}
      >
        <Rungs {...props} position={position} shown={told} lesson={lesson} isTaught={fromTeacher !== null} />
        <div className={styles.keys}>
          {isAway ? (
            <TakeOutButton {...props} onTakeOut={takeOut} staysHere={next !== null} />
          ) : (
            levelMax > 0 && (next !== null || !isOpen) && <AskButton {...props} next={next} />
          )}
          {isOpen && fromTeacher !== null && (
            <Button look="quiet" className={styles.quiet} onClick={leaving(fromTeacher.onPutAway)}>
              {t('hints:putAway')}
            </Button>
          )}
          {isOpen && fromTeacher === null && !inText && (
            <Button
              look="quiet"
              className={classNames(styles.quiet, styles.toGoal)}
              onClick={leaving(() => setPutAway(shown))}
            >
              {t('hints:toGoal')}
            </Button>
          )}
        </div>
      </section>
    </div>
  )
}

/** The button that is pressed goes with the press: whoever stood on it stays with the hint. */
function leaving(act: () => void) {
  return ({ currentTarget }: MouseEvent<HTMLButtonElement>) => {
    if (document.activeElement === currentTarget) currentTarget.closest('section')?.focus()
    act()
  }
}

function isSameHint(one: ShownHint | null, other: ShownHint): boolean {
  return one !== null && one.level === other.level && cubesEqual(one.position, other.position)
}

type RungsProps = Pick<HintLadderProps, 'position' | 'begun' | 'baseColour' | 'marks'> & {
  readonly shown: ShownHint | null
  readonly isTaught: boolean
  readonly lesson: { readonly span: StageSpan; readonly book: SequenceBook }
}

/** Always in the page, so that what comes in is heard. */
function Rungs({ shown, isTaught, position, begun, baseColour, marks, lesson }: RungsProps) {
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
      <div className={styles.words}>
        {at !== null && isTaught && <p className={styles.from}>{t('hints:fromTeacher')}</p>}
        <ol className={styles.rungs} aria-live="polite">
          {shown !== null &&
            at !== null &&
            hintWords(t, at, shown.level, baseColour, lesson).map((rung) => (
              <li key={rung.kind}>
                <p>{rung.words}</p>
                {rung.why !== null && <p className={styles.why}>{rung.why}</p>}
              </li>
            ))}
          {shown !== null && begun !== null && at === position && <li>{begunWords(t, begun, shown.level)}</li>}
        </ol>
      </div>
    </div>
  )
}

/** What is left is as much as what to do, and said from the rung on that says it. */
function begunWords(t: TFunction, { left }: StepUnderWay, level: HintLevel): string {
  if (level < 3) return t('hints:begun')
  return t('hints:left', { count: left.length, turns: left.map(writtenTurn).join(' ') })
}

function AskButton(props: HintLadderProps & { readonly next: HintLevel | null }) {
  const { next, cost, levelMax, onAsk } = props
  const { t } = useTranslation()
  const ask = (event: MouseEvent<HTMLButtonElement>) => {
    if (next === null) return
    // With the last rung the button goes.
    if (next === levelMax) leaving(() => onAsk(next))(event)
    else onAsk(next)
  }
  return (
    <LadderButton
      {...props}
      words={t(`hints:ask.${next ?? 1}`)}
      below={cost === 0 ? t('hints:free') : t('hints:cost', { count: cost })}
      off={next === null}
      onPress={ask}
    />
  )
}

type TakeOutButtonProps = HintLadderProps & {
  readonly onTakeOut: () => void
  /** There is a rung above: the button stays, and offers it. */
  readonly staysHere: boolean
}

function TakeOutButton({ onTakeOut, staysHere, ...props }: TakeOutButtonProps) {
  const { t } = useTranslation()
  return (
    <LadderButton
      {...props}
      words={t('hints:toHint')}
      below={t('hints:free')}
      off={false}
      onPress={staysHere ? onTakeOut : leaving(onTakeOut)}
    />
  )
}

type LadderButtonProps = Pick<HintLadderProps, 'button' | 'inText'> & {
  readonly words: string
  readonly below: string
  readonly off: boolean
  readonly onPress: (event: MouseEvent<HTMLButtonElement>) => void
}

function LadderButton({ words, below, off, onPress, button, inText = false }: LadderButtonProps) {
  return (
    <button
      ref={button}
      type="button"
      className={styles.ask}
      aria-disabled={off}
      aria-keyshortcuts={inText ? undefined : 'H'}
      onClick={onPress}
    >
      <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
        <path d="M12 3.500a6 6 0 0 0-3.600 10.800c.7.600 1.100 1.300 1.100 2.200h5c0-.9.400-1.600 1.100-2.200A6 6 0 0 0 12 3.500zM9.500 20.500h5" />
      </svg>
      <span className={styles.askWords}>
        <b>{words}</b>
        <span className={styles.cost}>{below}</span>
      </span>
    </button>
  )
}
