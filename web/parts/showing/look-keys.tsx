/**
 * Buttons that look around a shown cube by steps, as a drag beside it does, and one that leads back to how the teacher holds
 * it, which is there only while one looks from elsewhere.
 */

import { useRef } from 'react'
import { useTranslation } from 'react-i18next'
import {
  isFromFront,
  LOOK_FROM_FRONT,
  LOOK_SIDES,
  type Look,
  type LookSide,
  lookFromSide,
} from '../../cube/look-around.ts'
import { Button } from '../../ui/button.tsx'
import { Icon, type IconName } from '../../ui/icons.tsx'
import styles from './look-keys.module.css'

type LookKeysProps = {
  readonly look: Look
  readonly onLook: (look: Look) => void
  /** Whose hand holds the cube that one comes back to. */
  readonly isOwn: boolean
}

/** An arrow points to where the eye goes. */
const ARROWS: Readonly<Record<LookSide, IconName>> = { left: 'back', right: 'onward', above: 'down', below: 'down' }

export function LookKeys({ look, onLook, isOwn }: LookKeysProps) {
  const { t } = useTranslation()
  const keys = useRef<HTMLFieldSetElement>(null)
  return (
    <fieldset className={styles.keys} ref={keys} dir="ltr">
      <legend className="visually-hidden">{t('showing:look.title')}</legend>
      <span className={styles.eye}>
        <Icon of="show" />
      </span>
      {LOOK_SIDES.map((side) => {
        const next = lookFromSide(look, side)
        return (
          <Button
            key={side}
            look="quiet"
            icon={ARROWS[side]}
            className={side === 'above' ? styles.up : styles.key}
            aria-disabled={next.pitch === look.pitch && next.yaw === look.yaw}
            onClick={() => onLook(next)}
          >
            <span className="visually-hidden">{t(`showing:look.${side}`)}</span>
          </Button>
        )
      })}
      {!isFromFront(look) && (
        <Button
          look="quiet"
          className={styles.back}
          onClick={() => {
            // The button goes with its reason; the focus stays where the next press is likely.
            keys.current?.querySelector('button')?.focus()
            onLook(LOOK_FROM_FRONT)
          }}
        >
          {t(isOwn ? 'showing:look.backAtDesk' : 'showing:look.back')}
        </Button>
      )}
    </fieldset>
  )
}
