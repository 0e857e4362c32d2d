/** Asks before a long try is put away: the tool lies close to "take back", and a slip of the thumb must not cost a try. */

import type { TFunction } from 'i18next'
import { useTranslation } from 'react-i18next'
import { Button } from '../../ui/button.tsx'
import { Sheet } from '../../ui/sheet.tsx'

/** Fewer turns are quickly made again. */
export const TURNS_WORTH_ASKING = 8

type AskStartAgainProps = {
  /** Counted turns of the try, and what its hints cost. */
  readonly turns: number
  readonly nHints: number
  /** Of one hint. */
  readonly hintCost: number
  /** A list tells of hints in earlier tries; not where somebody practises alone. */
  readonly hasList: boolean
  readonly hasBest: boolean
  readonly onAgain: () => void
  readonly onClose: () => void
}

export function AskStartAgain(props: AskStartAgainProps) {
  const { onAgain, onClose } = props
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
      <p>{startAgainWords(t, props).join(' ')}</p>
    </Sheet>
  )
}

/** @returns what goes with the try, and what of it stays; turns are those that were turned, without the cost of hints */
export function startAgainWords(
  t: TFunction,
  { turns, nHints, hintCost, hasList, hasBest }: Omit<AskStartAgainProps, 'onAgain' | 'onClose'>,
): string[] {
  const turned = turns - nHints * hintCost
  const words: string[] = []
  if (turned > 0) words.push(t('bench:startAgain.sentence', { count: turned }))
  if (nHints > 0 && hintCost > 0) words.push(t('bench:startAgain.hintsCost', { count: nHints }))
  if (nHints > 0 && hasList) words.push(t('bench:startAgain.hintsStay', { count: nHints }))
  if (hasBest) words.push(t('bench:startAgain.bestStays'))
  return words
}
