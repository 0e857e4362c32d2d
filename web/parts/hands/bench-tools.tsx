/** The tools along the bottom of a phone or at the right of a larger screen. */

import { useTranslation } from 'react-i18next'
import { classNames } from '../../ui/class-names.ts'
import styles from './bench-tools.module.css'

const TOOL_PATHS = {
  reHold:
    'M12 8.2 17 10.6v5.2L12 18.4 7 15.8v-5.2zM7 10.6l5 2.5 5-2.5M12 13.1v5.3M4.2 8.6C5.6 4.9 9 3 12.4 3c3 0 5.6 1.4 7.2 4M20.4 3.2v4.2h-4.2',
  takeBack: 'M9 5 4 10l5 5M4 10h10a5.5 5.5 0 0 1 0 11h-3',
  startAgain: 'M4 4v16M20 12H9M14 6.5 8.5 12l5.5 5.5',
  look: 'M4 7h9M18 7h2M4 17h2M11 17h9M13.5 4.500h4v5h-4zM6.500 14.500h4v5h-4z',
  choose: 'M4 4h6.500v6.500H4zM13.500 4H20v6.500h-6.500zM4 13.500h6.500V20H4zM13.500 13.500H20V20h-6.500z',
  stuck:
    'M7 12.500V6.600a1.500 1.500 0 0 1 3 0V11M10 10.500V4.500a1.500 1.500 0 0 1 3 0v6M13 10.500V5.600a1.500 1.500 0 0 1 3 0V12M16 11.500V8.600a1.500 1.500 0 0 1 3 0V15c0 4-2.600 6.500-6.200 6.500-3 0-4.600-1.200-6-3.600L4 13.600c-.8-1.500 1.300-2.700 2.300-1.400L7.500 14',
} as const

export type ToolName = keyof typeof TOOL_PATHS
const TOOLS = Object.keys(TOOL_PATHS) as ToolName[]

type BenchToolsProps = {
  readonly onUse: (tool: ToolName) => void
  readonly off: readonly ToolName[]
  /** The re-hold pad is open; help was asked for. */
  readonly reHolding: boolean
  readonly stuck: boolean
  /** Tools that make no sense here. */
  readonly leftOut: readonly ToolName[]
  /** What the choice is called where it is not one of goals. */
  readonly chooseWords?: string | undefined
}

export function BenchTools({ onUse, off, reHolding, stuck, leftOut, chooseWords }: BenchToolsProps) {
  const { t } = useTranslation()
  const states = { reHold: { 'aria-expanded': reHolding }, stuck: { 'aria-pressed': stuck } }
  return (
    <nav className={styles.tools} aria-label={t('bench:tools.label')}>
      {TOOLS.filter((tool) => !leftOut.includes(tool)).map((tool) => (
        <button
          key={tool}
          type="button"
          className={classNames(
            styles.tool,
            ((tool === 'reHold' && reHolding) || (tool === 'stuck' && stuck)) && styles.raised,
          )}
          aria-disabled={off.includes(tool)}
          onClick={() => !off.includes(tool) && onUse(tool)}
          {...(tool === 'reHold' || tool === 'stuck' ? states[tool] : {})}
        >
          <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
            <path d={TOOL_PATHS[tool]} />
          </svg>
          <span>{tool === 'choose' ? (chooseWords ?? t('practice:choose')) : t(`bench:tools.${tool}`)}</span>
        </button>
      ))}
    </nav>
  )
}
