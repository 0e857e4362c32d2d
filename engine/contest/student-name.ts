/**
 * Names that students type for themselves. A name is a nickname on a projector, so it is short, plain and kind.
 * The list of rude words is deliberately small and never shown: a teacher can rename or remove anyone at once.
 */

import { err, ok, type Result } from '../result.ts'
import { NAME_LENGTH_MAX } from './limits.ts'

/** Why a typed name is not taken; the first that applies, in this order. */
export type NameRefusal =
  /** Nothing but spaces. Do: type a name. */
  | { readonly code: 'name/empty' }
  /** Do: shorten it to `max` letters. */
  | { readonly code: 'name/too-long'; readonly max: number }
  /** Something other than letters, figures, spaces, dashes and apostrophes. Do: leave it out. */
  | { readonly code: 'name/unusual-letters' }
  /** Looks rude. Do: choose another. Never says which part. */
  | { readonly code: 'name/choose-another' }
  /** Somebody here has this name already. Do: add a letter. */
  | { readonly code: 'name/taken' }

const RUDE_WORDS = [
  'fuck',
  'fick',
  'shit',
  'scheiss',
  'bitch',
  'cunt',
  'nigg',
  'arschloch',
  'hure',
  'nutte',
  'wichs',
  'puta',
  'mierda',
  'pendej',
  'merde',
  'putain',
  'salope',
  'connard',
  'porn',
  'penis',
  'vagina',
  'hitler',
  'nazi',
  'rape',
  'whore',
  'slut',
  'wank',
  'dick',
  'cock',
  'tits',
  'pussy',
  'asshole',
  'faggot',
  'retard',
]
/** Given names and surnames that hold such a run of letters and are fine. */
const KIND_AFTER_ALL = [
  'dickson',
  'dickens',
  'hancock',
  'peacock',
  'babcock',
  'scunthorpe',
  'hurem',
  'drape',
  'grape',
  'raper',
  'titsian',
  'cockburn',
  'ignazio',
  'nazir',
  'nazia',
  'nazim',
  'nazli',
  'nazife',
]

const LOOK_ALIKES: Readonly<Record<string, string>> = {
  '0': 'o',
  '1': 'i',
  '3': 'e',
  '4': 'a',
  '5': 's',
  '7': 't',
  '8': 'b',
}

/** Letters, figures and what joins them; a letter or figure among them. */
const USUAL_LETTERS = /^(?=.*[\p{L}\p{N}])[\p{L}\p{M}\p{N} .'’-]+$/u

/**
 * A letter that leaves no trace on the projector, such as the Hangul filler, or more marks on one letter than any
 * script needs: they would climb over the lane above.
 */
const UNSEEN_OR_TOWERING = /\p{Default_Ignorable_Code_Point}|\p{M}{4}/u

/** Reads a typed name: normalised (NFKC), spaces folded, checked. Where nothing is wrong the cleaned name is returned. */
export function readStudentName(typed: string): Result<string, NameRefusal> {
  const name = typed.normalize('NFKC').replace(/\s+/gu, ' ').trim()
  if (name === '') return err({ code: 'name/empty' })
  if (countGraphemes(name) > NAME_LENGTH_MAX) return err({ code: 'name/too-long', max: NAME_LENGTH_MAX })
  if (!USUAL_LETTERS.test(name) || UNSEEN_OR_TOWERING.test(name)) return err({ code: 'name/unusual-letters' })
  if (isRude(name)) return err({ code: 'name/choose-another' })
  return ok(name)
}

/** The form in which two names count as the same: case and accents aside. */
export function nameKey(name: string): string {
  return withoutAccents(name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
}

function isRude(name: string): boolean {
  const plain = nameKey(name)
  // Figures behind the last letter are a number, as in "Student 175"; before and between letters they may stand for some.
  const folded = plain.replace(/\d(?=.*\p{L})/gu, (figure) => LOOK_ALIKES[figure] ?? figure)
  // A letter said three times hides nothing.
  const squeezed = folded.replace(/(.)\1+/gu, '$1')
  return [folded, squeezed].some((text) => {
    const rest = KIND_AFTER_ALL.reduce((left, kind) => left.replaceAll(kind, '.'), text)
    return RUDE_WORDS.some((word) => rest.includes(word))
  })
}

function withoutAccents(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '')
}

/** A mark that joins a letter belongs to it; that is near enough to a grapheme cluster for names. */
function countGraphemes(text: string): number {
  return [...text.normalize('NFC').replace(/\p{M}/gu, '')].length
}
