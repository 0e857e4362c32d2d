/** The one button. At most one on a screen looks `accent`: it is the next thing to press. */

import type { ButtonHTMLAttributes, ReactNode } from 'react'
import styles from './button.module.css'
import { classNames } from './class-names.ts'
import { Icon, type IconName } from './icons.tsx'

const LOOKS = { plain: styles.plain, accent: styles.accent, quiet: styles.quiet } as const
const SIZES = { normal: undefined, large: styles.large } as const

type ButtonProps = Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'className'> & {
  look?: keyof typeof LOOKS
  size?: keyof typeof SIZES
  icon?: IconName
  /** Takes the whole width it is given. */
  wide?: boolean
  className?: string | undefined
  children: ReactNode
}

export function Button({
  look = 'plain',
  size = 'normal',
  icon,
  wide = false,
  className,
  children,
  ...rest
}: ButtonProps) {
  return (
    <button
      type="button"
      {...rest}
      className={classNames(styles.button, LOOKS[look], SIZES[size], wide && styles.wide, className)}
    >
      {icon !== undefined && <Icon of={icon} />}
      {children}
    </button>
  )
}

/** A link that looks like a button, for what opens a page of its own. */
export function ButtonLink({ href, icon, children }: { href: string; icon?: IconName; children: ReactNode }) {
  return (
    <a
      className={classNames(styles.button, LOOKS.plain, styles.link)}
      href={href}
      target="_blank"
      rel="noopener noreferrer"
    >
      {icon !== undefined && <Icon of={icon} />}
      {children}
    </a>
  )
}
