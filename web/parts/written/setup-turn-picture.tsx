/** A turn of a setup without letters: the layer and the way its stickers go, or the way that a re-hold takes. */

import { type Turn, turnAxis, turnKind, turnName } from '../../../engine/cube/turns.ts'
import { ArrowPicture, LayerPicture, ReHoldPicture } from '../hands/pad-pictures.tsx'
import { PAD, RE_HOLDS } from '../hands/pad-plan.ts'
import styles from './setup-turn-picture.module.css'

/** Draws nothing for a turn that the pad has no picture of; its words stand beside it. */
export function SetupTurnPicture({ turn }: { turn: Turn }) {
  const name = turnName(turn)
  if (turnKind(turn) === 're-hold') {
    const [quarter, times] = name.endsWith('2') ? [name.slice(0, -1), 2] : [name, 1]
    const reHold = RE_HOLDS.find((each) => each === quarter)
    if (reHold === undefined) return null
    return (
      <span className={styles.picture}>
        <ReHoldPicture reHold={reHold} />
        {times === 2 && <b>2</b>}
      </span>
    )
  }
  if (turnKind(turn) !== 'face') return null
  const strip = PAD.find(({ face }) => face === turnAxis(turn))
  if (strip === undefined) return null
  const arrow = [strip.first, strip.last].find((each) => each.turn === name)?.arrow
  return (
    <span className={styles.picture}>
      <LayerPicture face={strip.face} />
      {/* Half a turn comes to the same either way round. */}
      <ArrowPicture arrow={arrow ?? strip.first.arrow} />
      {arrow === undefined && <b>2</b>}
    </span>
  )
}
