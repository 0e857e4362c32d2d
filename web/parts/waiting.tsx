/** A quiet page while something is on its way. Nothing turns or blinks. */

import styles from './waiting.module.css'

export function Waiting({ words }: { words: string }) {
  return (
    <main className={styles.waiting}>
      <p role="status">{words}</p>
    </main>
  )
}
