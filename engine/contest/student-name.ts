/**
 * Names that students type for themselves, and those of a class's roster. A name is a nickname on a projector, so it is
 * short, plain and kind. No list sees everything: a teacher can rename or remove anyone at once.
 */

import { err, ok, type Result } from '../result.ts'
import { NAME_LENGTH_MAX } from './limits.ts'
import { looksRude } from './looks-rude.ts'

/** Why a typed name is not taken; the first that applies, in this order. */
export type NameRefusal =
  /** Nothing but spaces. Do: type a name. */
  | { readonly code: 'name/empty' }
  /** Do: shorten it to `max` letters. */
  | { readonly code: 'name/too-long'; readonly max: number }
  /** Something other than letters, figures, spaces, dashes and apostrophes, or letters of two alphabets. Do: leave it out. */
  | { readonly code: 'name/unusual-letters' }
  /** Looks rude. Do: choose another. Never says which part. */
  | { readonly code: 'name/choose-another' }
  /** Somebody here has this name already. Do: add a letter. */
  | { readonly code: 'name/taken' }

/** Letters, figures and what joins them; a letter or figure among them. */
const USUAL_LETTERS = /^(?=.*[\p{L}\p{N}])[\p{L}\p{M}\p{N} .'‘’-]+$/u

/**
 * A letter that leaves no trace on the projector, such as the Hangul filler, or more marks on one letter than any
 * script needs: they would climb over the lane above.
 */
const UNSEEN_OR_TOWERING = /\p{Default_Ignorable_Code_Point}|\p{M}{4}/u

/** Latin letters look like Greek and Cyrillic ones: a name of two of these alphabets is somebody else's name in disguise. */
const ALPHABETS_THAT_LOOK_ALIKE = [/\p{Script=Latin}/u, /\p{Script=Greek}/u, /\p{Script=Cyrillic}/u]

/** Parts letters that would join, as Persian and Kurdish are written. Not needed to read the name, and it is not seen. */
const NON_JOINER_AFTER_ARABIC = /(\p{Script=Arabic})\u200c+/gu

/** Reads a typed name: normalised (NFKC), spaces folded, checked. Where nothing is wrong the cleaned name is returned. */
export function readStudentName(typed: string): Result<string, NameRefusal> {
  const name = typed.normalize('NFKC').replace(NON_JOINER_AFTER_ARABIC, '$1').replace(/\s+/gu, ' ').trim()
  if (name === '') return err({ code: 'name/empty' })
  if (countGraphemes(name) > NAME_LENGTH_MAX) return err({ code: 'name/too-long', max: NAME_LENGTH_MAX })
  if (!USUAL_LETTERS.test(name) || UNSEEN_OR_TOWERING.test(name)) return err({ code: 'name/unusual-letters' })
  if (ALPHABETS_THAT_LOOK_ALIKE.filter((letter) => letter.test(name)).length > 1) {
    return err({ code: 'name/unusual-letters' })
  }
  if (looksRude(name)) return err({ code: 'name/choose-another' })
  return ok(name)
}

/** The form in which two names count as the same: case and accents aside. */
export function nameKey(name: string): string {
  return withoutAccents(name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
}

function withoutAccents(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '')
}

/** A mark that joins a letter belongs to it; that is near enough to a grapheme cluster for names. */
function countGraphemes(text: string): number {
  return [...text.normalize('NFC').replace(/\p{M}/gu, '')].length
}
