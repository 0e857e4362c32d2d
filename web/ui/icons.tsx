/** Line icons on a grid of 24. They always stand beside a word, so a screen reader does not hear them. */

import styles from './icons.module.css'

const PATHS = {
  pause: 'M8 5v14M16 5v14',
  play: 'M7 4.5v15l12-7.500z',
  plus: 'M12 5v14M5 12h14',
  stop: 'M6 6h12v12H6z',
  again: 'M5 12a7 7 0 1 0 2.200-5.100M5 3.500v4h4',
  onward: 'M9 5l7 7-7 7',
  back: 'M15 5l-7 7 7 7',
  down: 'M5 9l7 7 7-7',
  cross: 'M6 6l12 12M18 6L6 18',
  tick: 'M5 12.500l5 5 9.500-11',
  copy: 'M8.500 8.500h11v11h-11zM15 5H4.500v10.500',
  projector: 'M3 4.500h18v11H3zM12 15.500v4M8 20h8',
  large: 'M4 9V4h5M20 15v5h-5M4 4l6 6M20 20l-6-6',
  lock: 'M5.500 10.500h13v9h-13zM8.500 10.500V7a3.500 3.500 0 0 1 7 0v3.500',
  unlock: 'M5.500 10.500h13v9h-13zM8.500 10.500V7a3.500 3.500 0 0 1 6.800-1.200',
  settings: 'M4 7h9M18 7h2M4 17h2M11 17h9M13.500 4.500h4v5h-4zM6.500 14.500h4v5h-4z',
  pointer: 'M6 3.500v15l4-3.600 2.600 5.600 2.600-1.200-2.600-5.500H18z',
  wall: 'M4 4h6.500v6.500H4zM13.500 4H20v6.500h-6.500zM4 13.500h6.500V20H4zM13.500 13.500H20V20h-6.500z',
  show: 'M2.500 12S6 5.500 12 5.500 21.500 12 21.500 12 18 18.500 12 18.500 2.500 12 2.500 12zM12 9.200a2.800 2.800 0 1 1 0 5.600 2.800 2.800 0 0 1 0-5.600',
  hide: 'M2.500 12S6 5.500 12 5.500 21.500 12 21.500 12 18 18.500 12 18.500 2.500 12 2.500 12zM4 20L20 4',
  paper: 'M5 3.500h14v17H5zM8.500 8h7M8.500 12h7',
  slate: 'M3.500 5h17v12h-17zM8 20.500l1.500-3.500M16 20.500L14.500 17',
} as const

export type IconName = keyof typeof PATHS

export function Icon({ of }: { of: IconName }) {
  return (
    <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[of]} />
    </svg>
  )
}
