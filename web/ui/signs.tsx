/**
 * The signs of a student's state. Each has an outline of its own and reads at 16 px; only the pennant has colour.
 * Without a label a sign is decoration beside a word that says the same.
 */

import { classNames } from './class-names.ts'
import styles from './signs.module.css'

const SIGNS = ['reached', 'asksForHelp', 'stuck', 'brokeALayer', 'away'] as const
export type SignName = (typeof SIGNS)[number]

export function Sign({ of, label, className }: { of: SignName; label?: string; className?: string | undefined }) {
  const hearing = label === undefined ? { 'aria-hidden': true as const } : { role: 'img', 'aria-label': label }
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: it has a label, or is hidden because words beside it say the same.
    <svg className={classNames(styles.sign, className)} viewBox="0 0 24 24" {...hearing}>
      {SHAPES[of]}
    </svg>
  )
}

const SHAPES: Record<SignName, React.ReactNode> = {
  reached: (
    <>
      <path className={styles.pole} d="M6 22V2" />
      <path className={styles.pennant} d="M7 3h14l-4 5 4 5H7z" />
    </>
  ),
  asksForHelp: (
    <>
      <path className={styles.solid} d="M2.500 3.500h19v13H12l-5 5v-5H2.500z" />
      <path
        className={styles.cut}
        d="M9.300 8.300c0-3.700 5.600-3.500 5.600-.2 0 2.100-2.800 2.200-2.800 4M12.100 13.800v.4"
      />
    </>
  ),
  stuck: <path className={styles.solid} d="M4.500 2.500h15v3.500L13.500 12l6 6v3.500h-15V18l6-6-6-6z" />,
  brokeALayer: <path className={styles.solid} d="M2.500 2.500h15v6h-15zM6.500 14h15v7.500h-15z" />,
  // Two halves of a plug, pulled apart.
  away: (
    <path
      className={styles.solid}
      d="M2 9h3.500V6.500h4.500v11H5.500V15H2zM14 6.500h4.500V9H22v6h-3.500v2.500H14v-2.200h-2.200v-2H14v-2.600h-2.200v-2H14z"
    />
  ),
}
