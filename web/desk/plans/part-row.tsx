/** A part of a plan in its list: a line that unfolds into its fields. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPart } from '../../../engine/contest/plans/lesson-plan.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { Icon } from '../../ui/icons.tsx'
import { PartFields } from './part-fields.tsx'
import styles from './part-row.module.css'
import { partContent, partLength, partName } from './part-words.ts'

type PartRowProps = {
  part: LessonPart
  number: number
  isOpen: boolean
  isFirst: boolean
  isLast: boolean
  onOpen: (isOpen: boolean) => void
  onChange: (part: LessonPart) => void
  /** @param by -1 earlier, 1 later */
  onMove: (by: -1 | 1) => void
  onRemove: () => void
}

export function PartRow(props: PartRowProps) {
  const { part, number, isOpen, isFirst, isLast, onOpen, onChange, onMove, onRemove } = props
  const { t } = useTranslation()
  const fieldsId = useId()
  const name = partName(t, part)
  const content = partContent(t, part)
  return (
    <li className={classNames(styles.part, isOpen && styles.isOpen)}>
      <button
        type="button"
        className={styles.line}
        aria-expanded={isOpen}
        aria-controls={isOpen ? fieldsId : undefined}
        onClick={() => onOpen(!isOpen)}
      >
        <span className={styles.number}>{number}</span>
        <span className={styles.words}>
          <b>{name}</b>
          {content !== '' && <span>{content}</span>}
          {part.note !== '' && !isOpen && <span className={styles.note}>{part.note}</span>}
        </span>
        <span className={styles.length}>{partLength(t, part)}</span>
        <Icon of="down" />
      </button>
      <div className={styles.acts}>
        {/* At an end a button stays where it is, so that the keyboard does not lose its place. */}
        <Button
          look="quiet"
          aria-disabled={isFirst}
          aria-label={t('plans:part.upThis', { part: name })}
          onClick={() => !isFirst && onMove(-1)}
        >
          {t('plans:part.up')}
        </Button>
        <Button
          look="quiet"
          aria-disabled={isLast}
          aria-label={t('plans:part.downThis', { part: name })}
          onClick={() => !isLast && onMove(1)}
        >
          {t('plans:part.down')}
        </Button>
        <Button look="quiet" aria-label={t('plans:part.removeThis', { part: name })} onClick={onRemove}>
          {t('plans:part.remove')}
        </Button>
      </div>
      {isOpen && (
        <div id={fieldsId} className={styles.fields}>
          <PartFields part={part} onChange={onChange} />
        </div>
      )}
    </li>
  )
}
