/** One plan or class, open: the way back, its title, and what can be done with it. Unsaved work is asked about. */

import { type ReactNode, useId } from 'react'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { useAskToLeave } from '../place/use-desk-place.ts'
import styles from './edit-frame.module.css'
import { useArrivalFocus } from './use-arrival-focus.ts'

type EditFrameProps = {
  /** What is open, to be heard. */
  readonly name: string
  readonly back: string
  readonly title: {
    readonly label: string
    readonly value: string
    readonly placeholder: string
    readonly lengthMax: number
    readonly onChange: (title: string) => void
  }
  readonly acts: ReactNode
  readonly hasChanged: boolean
  readonly leaveAsk: { readonly title: string; readonly sentence: string; readonly yes: string }
  readonly onLeave: () => void
  readonly className?: string | undefined
  readonly children: ReactNode
}

export function EditFrame(props: EditFrameProps) {
  const { name, back, title, acts, hasChanged, leaveAsk, onLeave, className, children } = props
  const titleId = useId()
  const section = useArrivalFocus<HTMLElement>()
  const { asks, leave, stay } = useAskToLeave(hasChanged)
  return (
    <section ref={section} tabIndex={-1} className={classNames(styles.frame, className)} aria-label={name}>
      <div>
        <Button look="quiet" icon="back" onClick={onLeave}>
          {back}
        </Button>
      </div>
      <header className={styles.head}>
        <div className={styles.title}>
          <label htmlFor={titleId}>{title.label}</label>
          <input
            id={titleId}
            value={title.value}
            maxLength={title.lengthMax}
            placeholder={title.placeholder}
            autoComplete="off"
            onChange={(event) => title.onChange(event.currentTarget.value)}
          />
        </div>
        <div className={styles.acts}>{acts}</div>
      </header>
      {children}
      {asks && <AskFirst {...leaveAsk} onYes={leave} onClose={stay} />}
    </section>
  )
}
