/** Paper for bright rooms, slate for projectors: the button names the theme it would change to. */

import { useTranslation } from 'react-i18next'
import { Button } from './button.tsx'
import { useTheme } from './theme.ts'

export function ThemeChoice() {
  const { t } = useTranslation()
  const [theme, choose] = useTheme()
  const other = theme === 'paper' ? 'slate' : 'paper'
  return (
    <Button look="quiet" icon={other} onClick={() => choose(other)}>
      {t(`common:theme.${other}`)}
    </Button>
  )
}
