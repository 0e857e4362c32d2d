/**
 * The teacher's own cube: turned freely, or playing a way through the start, a student's turns among them. Seen by the
 * teacher alone until it is shown to all; then live on every bench and on the board.
 */

import { useCallback, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { PIECE_NAMES } from '../../../engine/contest/nudges.ts'
import type { Face } from '../../../engine/cube/faces.ts'
import { pieceAtSticker, stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { type Turn, type TurnName, turnName } from '../../../engine/cube/turns.ts'
import type { ShownCube } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { BenchLayout } from '../../parts/bench-page/bench-layout.tsx'
import { Hands } from '../../parts/hands/hands.tsx'
import { namedPiece } from '../../parts/lesson/place-words.ts'
import { CubeFace } from '../../parts/showing/cube-face.tsx'
import { PlayKeys } from '../../parts/showing/play-keys.tsx'
import { ShownRibbon } from '../../parts/showing/shown-ribbon.tsx'
import { useShownCube } from '../../parts/showing/use-shown-cube.ts'
import { Button } from '../../ui/button.tsx'
import type { RoomActs } from '../desk-acts.ts'
import styles from './demonstrate.module.css'
import {
  type GivenTurns,
  isOwnCube,
  type Source,
  shownFrom,
  sourcesOf,
  sourceWords,
  takenUp,
} from './demonstration-source.ts'
import { useExampleStart } from './example-start.ts'
import { useShowing } from './use-showing.ts'

type DemonstrateProps = {
  readonly view: DeskView
  readonly acts: Pick<RoomActs, 'show' | 'showAt'>
  readonly given: GivenTurns | null
  readonly onBack: () => void
}

export function Demonstrate({ view, acts, given, onBack }: DemonstrateProps) {
  const { t } = useTranslation()
  const pieceId = useId()
  const sourceId = useId()
  const { example, drawAnother } = useExampleStart(view)
  // A teacher who comes to show a student's turns comes for these; else what the class sees goes on.
  const [begun] = useState(() =>
    view.showing === null || isFresh(given) ? null : takenUp(t, view.showing, { view, given, example, kept: null }),
  )
  useEffect(() => {
    if (given !== null) CAME_FOR.add(given)
  }, [given])
  const material = { view, given, example, kept: begun?.kept ?? null }
  const sources = sourcesOf(material)
  const [wished, setWished] = useState<Source | null>(null)
  const source = [wished, begun?.source].find((each) => each != null && sources.includes(each)) ?? sources[0]
  const isOwn = isOwnCube(source)
  const list = useRef<HTMLSelectElement>(null)
  // A cube of one's own and a way that plays are laid out differently: the list is another one then, and keeps the focus.
  useLayoutEffect(() => {
    if (wished !== null) list.current?.focus()
  }, [wished])
  const [own, setOwn] = useState<readonly TurnName[]>(begun?.own ?? NOTHING)
  const [gone, setGone] = useState(begun?.gone ?? 0)
  const [pointer, setPointer] = useState<string | null>(begun?.pointer ?? null)
  const { title, start, baseColour, turns: listed } = shownFrom(t, source, material, own)
  // Each view of the room brings the same ways as new lists: what is shown must not change with them.
  const written = listed.join(' ')
  const turns = useMemo(() => (written === '' ? NOTHING : (written.split(' ') as TurnName[])), [written])
  const shown = useMemo(
    (): ShownCube => ({ kind: 'cube', title, start, baseColour, turns }),
    [title, start, baseColour, turns],
  )
  const done = Math.min(isOwn ? own.length : gone, turns.length)
  const at = useMemo(() => ({ at: done, chosen: 0, pointer }), [done, pointer])
  const { isLive, begin, end } = useShowing(view, acts, shown, at, begun !== null)
  const cube = useShownCube(start, turns, done)
  const handActs = useMemo(
    () => ({
      turn: (more: readonly Turn[]) => setOwn((before) => [...before, ...more.map(turnName)]),
      takeBack: () => setOwn((before) => before.slice(0, -1)),
      startAgain: () => setOwn([]),
    }),
    [],
  )
  const point = useCallback(
    (sticker: number) => setPointer((before) => toggled(before, pieceAtSticker(cube.position, sticker))),
    [cube],
  )
  const controls = (
    <div className={isOwn ? styles.side : styles.bar}>
      <h1>{t('showing:demonstrate.title')}</h1>
      <div className={styles.point}>
        <label htmlFor={sourceId}>{t('showing:demonstrate.what')}</label>
        <select
          ref={list}
          id={sourceId}
          value={source}
          onChange={(event) => {
            setWished(event.currentTarget.value as Source)
            setOwn([])
            setGone(0)
          }}
        >
          {sources.map((each) => (
            <option key={each} value={each}>
              {sourceWords(t, each, material)}
            </option>
          ))}
        </select>
      </div>
      <div className={styles.show}>
        <Button look={isLive ? 'plain' : 'accent'} icon={isLive ? 'stop' : 'projector'} onClick={isLive ? end : begin}>
          {t(isLive ? 'showing:demonstrate.end' : 'showing:demonstrate.begin')}
        </Button>
        <p className={styles.state} role="status">
          {t(`showing:demonstrate.${isLive ? 'shown' : view.showing === null ? 'notShown' : 'otherShown'}`)}
        </p>
      </div>
      <div className={styles.point}>
        <label htmlFor={pieceId}>{t('showing:demonstrate.point')}</label>
        <select
          id={pieceId}
          className={styles.piece}
          value={pointer ?? ''}
          onChange={(event) => setPointer(event.currentTarget.value || null)}
        >
          <option value="">{t('showing:demonstrate.pointNothing')}</option>
          {PIECE_NAMES.map((home) => (
            <option key={home} value={home}>
              {namedPiece(t, [...home] as Face[], baseColour)}
            </option>
          ))}
        </select>
      </div>
      {(source === 'own-case' || source === 'case-way') && (
        <Button
          look="quiet"
          icon="again"
          onClick={() => {
            drawAnother()
            setOwn([])
            setGone(0)
          }}
        >
          {t('showing:demonstrate.another')}
        </Button>
      )}
      <Button look="quiet" icon="back" onClick={onBack}>
        {t('showing:demonstrate.back')}
      </Button>
    </div>
  )
  if (isOwn) {
    return (
      <BenchLayout
        name={t('showing:demonstrate.title')}
        head={controls}
        clock={null}
        line={<ShownRibbon turns={own} at={own.length} isMade />}
      >
        <Hands
          cube={cube}
          baseColour={baseColour}
          marks="plain"
          acts={handActs}
          canTurn
          canTakeBack={own.length > 0}
          canStartAgain={own.length > 0}
          shortcuts
          stuck={false}
          onStuck={null}
          onOpenLook={null}
          ringed={pointer === null ? NO_STICKERS : stickersOfPiece(cube.position, pointer)}
        />
      </BenchLayout>
    )
  }
  return (
    <main className={styles.demonstrate} aria-label={t('showing:demonstrate.title')}>
      {controls}
      <CubeFace shown={shown} at={at} marks="plain" onPoint={point}>
        <PlayKeys turns={shown.turns} at={done} onGo={setGone} />
      </CubeFace>
    </main>
  )
}

const NOTHING: readonly TurnName[] = []
const NO_STICKERS: readonly number[] = []

/** Turns of students that a teacher has come for once: whoever comes back by the browser's history does not come for them. */
const CAME_FOR = new WeakSet<GivenTurns>()

function isFresh(given: GivenTurns | null): boolean {
  return given !== null && !CAME_FOR.has(given)
}

function toggled(before: string | null, piece: string | null): string | null {
  return before === piece ? null : piece
}
