/** Asks before a long try is put away: the tool lies close to "take back", and a slip of the thumb must not cost a try. */

import { useTranslation } from 'react-i18next'
import { Button } from '../../ui/button.tsx'
import { Sheet } from '../../ui/sheet.tsx'

/** Fewer turns are quickly made again. */
export const TURNS_WORTH_ASKING = 8

type AskStartAgainProps = {
  readonly turns: number
  readonly hasBest: boolean
  readonly onAgain: () => void
  readonly onClose: () => void
}

export function AskStartAgain({ turns, hasBest, onAgain, onClose }: AskStartAgainProps) {
  const { t } = useTranslation()
  return (
    <Sheet
      title={t('bench:startAgain.title')}
      onClose={onClose}
      answers={
        <>
          <Button onClick={onAgain}>{t('bench:startAgain.again')}</Button>
          <Button look="accent" onClick={onClose}>
            {t('bench:startAgain.keep')}
          </Button>
        </>
      }
    >
      <p>
        {t('bench:startAgain.sentence', { count: turns })} {hasBest && t('bench:startAgain.bestStays')}
      </p>
    </Sheet>
  )
}
