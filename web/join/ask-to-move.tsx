/** Somebody holds that name already: perhaps the same child, on the device that it had before. The teacher decides. */

import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'

export function AskToMove({ name, onAsk }: { readonly name: string; readonly onAsk: () => void }) {
  const { t } = useTranslation()
  return (
    <Button wide onClick={onAsk}>
      {t('join:thatIsMe', { name })}
    </Button>
  )
}
