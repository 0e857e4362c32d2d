/**
 * What the hands do: the cube in the middle of its turn pad, the triggers, the tools, and the keyboard for all of them.
 * The same for a round and for the cube that passes the time until one begins.
 */

import { memo, type ReactNode, useCallback, useState } from 'react'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { rotationOf } from '../../cube/layer-rotation.ts'
import { isFromFront, LOOK_FROM_FRONT, LOOK_STEP_DEGREES, lookFurther } from '../../cube/look-around.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { TurningCube } from '../../cube/turning-cube.tsx'
import type { CubeInHand } from '../../cube/turns-between.ts'
import { BenchTools, type ToolName } from './bench-tools.tsx'
import type { HandActs } from './hand-acts.ts'
import { LookBack } from './look-back.tsx'
import { ReHoldPad } from './re-hold-pad.tsx'
import type { Shortcut } from './read-shortcut.ts'
import { TRIGGERS, TriggerKeys } from './trigger-keys.tsx'
import { TurnPad } from './turn-pad.tsx'
import { useShortcuts } from './use-shortcuts.ts'

export type HandsProps = {
  readonly cube: CubeInHand
  readonly baseColour: Colour
  readonly marks: MarkStyle
  readonly acts: HandActs
  /** Whether turns count now, or at least turn something. */
  readonly canTurn: boolean
  readonly canTakeBack: boolean
  readonly canStartAgain: boolean
  readonly shortcuts: boolean
  readonly stuck: boolean
  /** Null where nobody watches: then nobody can be told. */
  readonly onStuck: ((stuck: boolean) => void) | null
  /** Null where there is nothing to choose. */
  readonly onOpenLook: (() => void) | null
  /** Leads back to the choice of what to play; a tool of its own where there is one, with these words. */
  readonly onChoose?: () => void
  readonly chooseWords?: string
  /** H was pressed, where hints may be asked for. */
  readonly onHint?: () => void
  /** Stickers that a pointer rings, by index 0..53, as the cube stands. */
  readonly ringed?: readonly number[]
  /** Stands in the cube's place, as the countdown does. */
  readonly insteadOfCube?: ReactNode
  /** Stands in the triggers' place, as the reached goal does. */
  readonly insteadOfTriggers?: ReactNode
}

export const Hands = memo(function Hands(props: HandsProps) {
  const { cube, acts, canTurn, canTakeBack, canStartAgain, insteadOfCube = null, insteadOfTriggers = null } = props
  const [look, setLook] = useState(LOOK_FROM_FRONT)
  const [pointed, setPointed] = useState<Turn | null>(null)
  const [reHolding, setReHolding] = useState(false)
  const onTurn = useCallback((turn: Turn) => acts.turn([turn]), [acts])
  const onTrigger = useCallback((turns: readonly Turn[]) => acts.turn(turns), [acts])

  const onShortcut = (shortcut: Parameters<Parameters<typeof useShortcuts>[1]['onShortcut']>[0]) => {
    switch (shortcut.kind) {
      case 'turn':
        if (canTurn) acts.turn([shortcut.turn])
        return
      case 'trigger':
        if (canTurn) acts.turn(TRIGGERS[shortcut.side])
        return
      case 'take-back':
        if (canTakeBack) acts.takeBack()
        return
      case 'look':
        setLook((now) => lookFurther(now, lookStep(shortcut)))
        return
      case 'look-from-front':
        setLook(LOOK_FROM_FRONT)
        return
      case 'hint':
        props.onHint?.()
        return
    }
  }
  const halfNext = useShortcuts(props.shortcuts, { onShortcut, onDrop: () => setReHolding(false) })

  const onUse = (tool: ToolName) => {
    if (tool === 'reHold') setReHolding((open) => !open)
    if (tool === 'takeBack') acts.takeBack()
    if (tool === 'startAgain') acts.startAgain()
    if (tool === 'look') props.onOpenLook?.()
    if (tool === 'stuck') props.onStuck?.(!props.stuck)
    if (tool === 'choose') props.onChoose?.()
  }
  const left: ToolName[] = []
  if (props.onStuck === null) left.push('stuck')
  if (props.onOpenLook === null) left.push('look')
  if (props.onChoose === undefined) left.push('choose')
  const off: ToolName[] = []
  if (!canTurn) off.push('reHold')
  if (!canTakeBack) off.push('takeBack')
  if (!canStartAgain) off.push('startAgain')

  const isReHolding = reHolding && canTurn
  return (
    <>
      <TurnPad off={!canTurn} halfNext={halfNext} onTurn={onTurn} onPoint={setPointed}>
        {insteadOfCube ?? (
          <TurningCube
            cube={cube}
            baseColour={props.baseColour}
            marks={props.marks}
            turnable={canTurn}
            onTurn={onTurn}
            look={look}
            onLook={setLook}
            outlined={pointed === null ? null : rotationOf(pointed)}
            pointed={props.ringed}
          />
        )}
        {!isFromFront(look) && insteadOfCube === null && <LookBack onLookBack={() => setLook(LOOK_FROM_FRONT)} />}
      </TurnPad>
      {insteadOfTriggers ?? <TriggerKeys off={!canTurn} onTrigger={onTrigger} aside={isReHolding} />}
      {isReHolding && <ReHoldPad off={!canTurn} onTurn={onTurn} />}
      <BenchTools
        onUse={onUse}
        off={off}
        reHolding={isReHolding}
        stuck={props.stuck}
        leftOut={left}
        chooseWords={props.chooseWords}
      />
    </>
  )
})

function lookStep({ pitch, yaw }: Extract<Shortcut, { kind: 'look' }>) {
  return { pitch: pitch * LOOK_STEP_DEGREES, yaw: yaw * LOOK_STEP_DEGREES }
}
