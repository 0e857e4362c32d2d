/** The goal of a stage as a picture: what matters in colour, all else grey and smaller. */

import { memo } from 'react'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { stickersOf } from '../../engine/cube/stickers.ts'
import { stickersThatMatter } from '../../engine/method/goals.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { CubePicture } from './cube-picture.tsx'
import type { MarkStyle } from './sticker-colours.ts'

export type GoalPictureProps = {
  readonly stage: Stage
  readonly baseColour: Colour
  readonly marks?: MarkStyle | undefined
  readonly label: string
  readonly className?: string | undefined
}

export const GoalPicture = memo(function GoalPicture({ stage, ...drawing }: GoalPictureProps) {
  const view = stage <= LAST_BOTTOM_STAGE ? 'over-mirror' : 'plain'
  return <CubePicture stickers={SOLVED_STICKERS} matters={stickersThatMatter(stage)} view={view} {...drawing} />
})

/** The goals of the first two stages lie at the bottom: from above, a cross would be two lonely edges. */
const LAST_BOTTOM_STAGE = 2

const SOLVED_STICKERS = stickersOf(solvedCube())
