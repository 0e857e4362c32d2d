/** What a name may not say, and what it may. Rules NA: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { looksRude } from '../../../engine/contest/looks-rude.ts'
import { RUDE_ANYWHERE, RUDE_AS_WORD, RUDE_AT_FIRST } from '../../../engine/contest/rude-words.ts'
import { readStudentName } from '../../../engine/contest/student-name.ts'
import { SEED } from '../cube/arbitraries.ts'

const ALL = [...RUDE_ANYWHERE, ...RUDE_AT_FIRST, ...RUDE_AS_WORD]
const FIGURES: Record<string, string> = {
  a: '4',
  b: '8',
  e: '3',
  g: '9',
  i: '1',
  l: '1',
  o: '0',
  s: '5',
  t: '7',
  z: '2',
}
const CYRILLIC: Record<string, string> = {
  a: 'а',
  b: 'в',
  c: 'с',
  e: 'е',
  h: 'н',
  i: 'і',
  k: 'к',
  m: 'м',
  o: 'о',
  p: 'р',
  t: 'т',
  x: 'х',
  y: 'у',
}
const letters = (word: string, change: Record<string, string>) => [...word].map((each) => change[each] ?? each).join('')

/** How children write around a filter. */
const DISGUISES: Record<string, (word: string) => string> = {
  'as it stands': (word) => word,
  shouted: (word) => word.toUpperCase(),
  'one figure': (word) => word.replace(/[abegiloszt]/, (letter) => FIGURES[letter]),
  'a figure for every letter that has one': (word) => letters(word, FIGURES),
  accents: (word) => word.replace(/[aeiouyn]/g, '$&\u0301').normalize('NFC'),
  'drawn out': (word) => word.replace(/(.)$/, '$1$1$1').replace(/[aeiou]/, '$&$&$&'),
  'letter by letter': (word) => [...word].join(' '),
  'letter by letter, dots': (word) => [...word].join('.'),
  'cut in two': (word) => `${word.slice(0, 2)}-${word.slice(2)}`,
  'Cyrillic among Latin': (word) => letters(word, CYRILLIC),
  'wide letters': (word) => word.replace(/[a-z]/g, (each) => String.fromCodePoint(each.charCodeAt(0) + 0xfee0)),
  'bold letters of mathematics': (word) =>
    word.replace(/[a-z]/g, (each) => String.fromCodePoint(each.charCodeAt(0) - 97 + 0x1d41a)),
  'a number behind': (word) => `${word}07`,
  'a name behind': (word) => `${word} Ben`,
  'a name before': (word) => `Mia ${word}`,
}
const isRefused = (typed: string) => !readStudentName(typed).ok

describe('a rude word', () => {
  test('[NA1] is refused in 99 of 100 disguises, over all words of four languages', () => {
    const tried = Object.entries(DISGUISES).flatMap(([disguise, write]) =>
      ALL.map((word) => ({ disguise, typed: write(word) })),
    )
    const missed = tried.filter(({ typed }) => !isRefused(typed))
    expect(tried.length).toBeGreaterThan(5_000)
    expect(missed.length / tried.length, JSON.stringify(missed)).toBeLessThan(0.01)
  })

  test.each([
    ['figures for letters', '5h17'],
    ['figures at the end', 'a55'],
    ['taken apart', 'fu ck'],
    ['taken apart, with an ending', 'fuc ker'],
    ['two words in one', 'NiceAss'],
    ['with the accent that makes it rude', 'coño'],
    ['in small capitals', 'ꜰᴜᴄᴋ'],
    ['an old u', 'fvckit'],
    ['German', 'Fick dich'],
    ['Spanish', 'hijo de puta'],
    ['French', 'fils de pute'],
  ])('[NA1] %s: %s', (_what, typed) => expect(looksRude(typed)).toBe(true))
})

describe('a good name', () => {
  // Origin: real given names, surnames and places that hold a rude run of letters, or become one with a letter behind.
  test.each([
    ['Scunthorpe'],
    ['Dickson'],
    ['Peacock'],
    ['Ignazio'],
    ['Nazir'],
    ['Nazlı'],
    ['Cassandra'],
    ['Monique'],
    ['Véronique'],
    ['Harshit'],
    ['Akshita'],
    ['Yoshito'],
    ['Shital'],
    ['Somporn'],
    ['Poornima'],
    ['Dildora'],
    ['Chiêu Minh'],
    ['Essex'],
    ['Analía'],
    ['Ana L.'],
    ['Ana1'],
    ['Naz 1'],
    ['Phúc K.'],
    ['Shi T.'],
    ['Dominic Ockley'],
    ['Kunti'],
    ['Hansi Flick'],
    ['Conchita'],
    ['Kike'],
    ['Semen'],
    ['Isis'],
    ['Тит'],
    ['Student 175'],
    ['Student 88'],
    ['Student 206'],
    ['Student 208'],
  ])('[NA2] %s is taken', (name) => expect(readStudentName(name)).toEqual({ ok: true, value: name.normalize('NFKC') }))
})

test('[NA3] letters of two alphabets that look alike do not go together', () => {
  expect(readStudentName('Аda')).toMatchObject({ error: { code: 'name/unusual-letters' } })
  for (const name of ['Ада', 'Ada', 'Άννα', 'さくらサクラ桜', '김민준 Kim'])
    expect(readStudentName(name).ok, name).toBe(true)
})

test('[NA4] a name keeps what its language needs: what is not seen is left out, the letters stay', () => {
  expect(readStudentName('به‌رات')).toEqual({ ok: true, value: 'بهرات' })
  expect(readStudentName('Ulug‘bek')).toEqual({ ok: true, value: 'Ulug‘bek' })
})

test('[NA1] no text makes the check fail', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 64 }), (text) => {
      expect(typeof looksRude(text)).toBe('boolean')
    }),
    { seed: SEED },
  )
})
