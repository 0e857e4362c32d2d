/** Three, two, one, in the cube's place. The start stays hidden until the signal. */

import styles from './count-down.module.css'

export function CountDown({ seconds }: { seconds: number }) {
  return (
    <p className={styles.count} role="status">
      {seconds}
    </p>
  )
}
