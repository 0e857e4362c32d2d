/**
 * Whether a name says something rude, seen through the ways in which children write around a filter: figures for letters,
 * letters of another alphabet that look the same, accents, a letter said many times, a word taken apart.
 *
 * A name is cut into words; a word holds, begins with or is one of `rude-words.ts`. Words are put together again only
 * where nobody is called so: "fu ck" and "a s s", but neither "Shi T" nor "Dominic Ockley".
 */

import {
  KIND_AFTER_ALL,
  KIND_BEFORE_A_LETTER,
  RUDE_ANYWHERE,
  RUDE_AS_WORD,
  RUDE_AT_FIRST,
  RUDE_WITH_ACCENT,
} from './rude-words.ts'

/** Letters that look or sound like plain ones and are not taken apart by normalisation (NFKD). */
const PLAIN_FOR = new Map(
  `ß ss æ ae œ oe ø o ð d đ d þ th ħ h ı i ł l ŧ t ƒ f ɑ a ɡ g ɩ i ᴀ a ʙ b ᴄ c ᴅ d ᴇ e ꜰ f ɢ g ʜ h ɪ i ᴊ j ᴋ k ʟ l ᴍ m
  ɴ n ᴏ o ᴘ p ʀ r ꜱ s ᴛ t ᴜ u ᴠ v ᴡ w ʏ y ᴢ z
  а a в b е e к k м m н h о o р p с c т t у y х x і i ј j ѕ s ԁ d ԛ q ԝ w һ h ү y
  α a β b ε e ι i κ k ν v ο o ρ p τ t υ u χ x ω w`
    .trim()
    .split(/\s+/)
    .flatMap((letter, index, all) => (index % 2 === 0 ? [[letter, all[index + 1]] as const] : [])),
)

/** Which figures stand for a letter; "v" is an old "u". */
const WRITTEN_AS: Readonly<Record<string, string>> = {
  a: 'a4',
  b: 'b68',
  e: 'e3',
  g: 'g69',
  i: 'i1',
  l: 'l1',
  o: 'o0',
  s: 's5',
  t: 't7',
  u: 'uv',
  z: 'z2',
}

/** How often a letter is said when it is drawn out; a name seldom doubles a letter, and never says one three times. */
type DrawnOut = 'twice' | 'three-times'

const ANYWHERE = anyOf(RUDE_ANYWHERE, 'twice')
const AT_FIRST = anyOf(RUDE_AT_FIRST, 'three-times')
const AS_WORD = anyOf(RUDE_AS_WORD, 'three-times')

const HOLDS = new RegExp(ANYWHERE)
const BEGINS = new RegExp(`^(?:${AT_FIRST})`)
const IS = new RegExp(`^\\d*(?:${AS_WORD})\\d*$`)
/** Shorter words taken apart are also two short names, or a name and the first letter of another. */
const LONG_ENOUGH = 5
const LONG = [...RUDE_AT_FIRST, ...RUDE_AS_WORD].filter((word) => word.length >= LONG_ENOUGH)
/** A word that was taken apart, with at most an ending behind it. */
const TAKEN_APART = new RegExp(
  `^(?:${ANYWHERE}|${anyOf(LONG, 'three-times')})(?:e|er|ers|ing|s|y|en|ed|face|you|off)?$`,
)

const KIND = new RegExp(KIND_AFTER_ALL.join('|'), 'g')

/** Several figures alone are a number, as in "Student 208", and stand for no letters. */
const NUMBER = /^\d{2,}$/

/** One or two figures behind three letters or more: the second Ana is "Ana1". */
const NUMBERED = /^(\p{L}{3,})\d{1,2}$/u

/** Words of a name that are put together again, at most: a rude word is longer than that many parts of it only in single letters. */
const PARTS_MAX = 4

/**
 * @param name normalised (NFKC)
 * @returns true for what no board should show
 */
export function looksRude(name: string): boolean {
  const spoken = name.toLowerCase().split(/[^\p{L}\p{M}\p{N}]+/u)
  if (spoken.some((word) => RUDE_WITH_ACCENT.includes(word))) return true
  const joined = name.split(' ').map((part) => wordsOf(part).join(''))
  if (joined.some((part) => HOLDS.test(part.replace(KIND, '.')) || IS.test(withoutNumber(part)))) return true
  return [wordsOf(name), wordsOf(name.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))].some(
    (words) => words.some(isRudeWord) || isRudeTogether(words),
  )
}

function wordsOf(name: string): string[] {
  return plainLetters(name)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && !NUMBER.test(word))
}

function plainLetters(text: string): string {
  const plain = text.toLowerCase().normalize('NFKD').replace(/\p{M}/gu, '')
  return plain.replace(/[^a-z0-9\s]/g, (letter) => PLAIN_FOR.get(letter) ?? letter)
}

function isRudeWord(word: string): boolean {
  const rest = word.replace(KIND, '.')
  return HOLDS.test(rest) || BEGINS.test(rest) || IS.test(withoutNumber(rest))
}

function withoutNumber(word: string): string {
  return NUMBERED.exec(word)?.[1] ?? word
}

function isRudeTogether(words: readonly string[]): boolean {
  const [given, letter] = words.slice(-2)
  if (letter?.length === 1 && KIND_BEFORE_A_LETTER.includes(given)) return isRudeTogether(words.slice(0, -1))
  const runs = [runsOf(words, 1).some(isRudeWord), runsOf(words, 2).some((run) => HOLDS.test(run) || BEGINS.test(run))]
  if (runs.includes(true)) return true
  return words.some((_, first) => {
    for (let end = first + 2; end <= Math.min(words.length, first + PARTS_MAX); end++) {
      if (TAKEN_APART.test(words.slice(first, end).join(''))) return true
    }
    return false
  })
}

/** @returns words put together wherever several in a row have no more than so many letters */
function runsOf(words: readonly string[], nLettersMax: number): string[] {
  const runs: string[] = []
  let run: string[] = []
  for (const word of [...words, 'end of the name']) {
    if (word.length <= nLettersMax) {
      run.push(word)
      continue
    }
    if (run.length > 1) runs.push(run.join(''))
    run = []
  }
  return runs
}

function anyOf(words: readonly string[], drawnOut: DrawnOut): string {
  return words.map((word) => pattern(word, drawnOut)).join('|')
}

/** Each letter in its disguises, as often as in the word or drawn out. */
function pattern(word: string, drawnOut: DrawnOut): string {
  return word.replace(/(.)\1*/g, (run, letter: string) => {
    const letters = `[${WRITTEN_AS[letter] ?? letter}]`
    const asWritten = run.length === 1 ? letters : `${letters}{${run.length}}`
    return drawnOut === 'twice' ? `${letters}{${run.length},}` : `(?:${letters}{3,}|${asWritten})`
  })
}
