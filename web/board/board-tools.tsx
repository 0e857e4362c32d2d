/** What can be done at the projector itself: let the board stand still (WCAG 2.2.2), change the theme, fill the screen. */

import { useTranslation } from 'react-i18next'
import { Icon } from '../ui/icons.tsx'
import { useTheme } from '../ui/theme.ts'
import styles from './board-tools.module.css'

type BoardToolsProps = { standsStill: boolean; onStandStill: (still: boolean) => void }

export function BoardTools({ standsStill, onStandStill }: BoardToolsProps) {
  const { t } = useTranslation()
  const [theme, chooseTheme] = useTheme()
  const other = theme === 'paper' ? 'slate' : 'paper'
  return (
    <div className={styles.tools}>
      <button type="button" className={styles.tool} onClick={() => onStandStill(!standsStill)}>
        <Icon of={standsStill ? 'play' : 'pause'} />
        {t(standsStill ? 'board:goOn' : 'board:standStill')}
      </button>
      <button type="button" className={styles.tool} onClick={() => chooseTheme(other)}>
        <Icon of={other} />
        {t(`common:theme.${other}`)}
      </button>
      {document.fullscreenEnabled && (
        <button type="button" className={styles.tool} onClick={() => void document.documentElement.requestFullscreen()}>
          <Icon of="large" />
          {t('board:fillScreen')}
        </button>
      )}
      {standsStill && (
        <p className="visually-hidden" role="status">
          {t('board:standsStill')}
        </p>
      )}
    </div>
  )
}
