/** A page that says one thing and offers one thing to do: the seat is gone, the page is old. */

import { Button } from '../ui/button.tsx'
import styles from './one-message.module.css'

type OneMessageProps = {
  readonly title: string
  readonly sentence?: string
  readonly button: string
  readonly onPress: () => void
}

export function OneMessage({ title, sentence, button, onPress }: OneMessageProps) {
  return (
    <main className={styles.message}>
      <div role="status">
        <h1>{title}</h1>
        {sentence !== undefined && <p>{sentence}</p>}
      </div>
      <Button look="accent" size="large" onClick={onPress}>
        {button}
      </Button>
    </main>
  )
}
