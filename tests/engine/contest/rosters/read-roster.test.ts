/** How a class is read from text. Rules RS: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { whatIsLeft, withChanges } from '../../../../engine/contest/rosters/change-roster-text.ts'
import { ROSTER_PUPILS_MAX, ROSTER_TEXT_LENGTH_MAX } from '../../../../engine/contest/rosters/limits.ts'
import { type RosterReading, readRoster } from '../../../../engine/contest/rosters/read-roster.ts'
import type { ColumnChoice } from '../../../../engine/contest/rosters/roster-columns.ts'
import { readStudentName } from '../../../../engine/contest/student-name.ts'
import { SEED } from '../../cube/arbitraries.ts'

const read = (text: string, wish: ColumnChoice | null = null, inClass: string[] = []) => readRoster(text, wish, inClass)
const namesIn = (reading: RosterReading) => reading.names.map(({ name }) => name)

describe('names are found', () => {
  test.each([
    ['one a line', 'Ana\nBen\n\nCem\n', ['Ana', 'Ben', 'Cem']],
    ['one a line, with the line ends of Windows', 'Ana\r\nBen\r\n', ['Ana', 'Ben']],
    ['between commas', 'Ana, Ben,Cem', ['Ana', 'Ben', 'Cem']],
    ['between semicolons', 'Ana; Ben; Cem;', ['Ana', 'Ben', 'Cem']],
    ['between commas, lines of unequal length', 'Ana, Ben\nCem', ['Ana', 'Ben', 'Cem']],
    ['behind a byte order mark', '\uFEFFAna\nBen', ['Ana', 'Ben']],
    ['under a heading', 'Name\nAna\nBen', ['Ana', 'Ben']],
    ['in quotes', '"Ana"\n"Ben"', ['Ana', 'Ben']],
    ['with a family name in the same quotes', '"Koch, Ana"\n"Lang, Ben"', ['Ana', 'Ben']],
    ['family, given', 'Koch, Ana\nLang, Ben', ['Ana', 'Ben']],
    ['a table with headings, tabs', 'Nachname\tVorname\tKlasse\nKoch\tAna\t7b\nLang\tBen\t7b', ['Ana', 'Ben']],
    ['a table with headings, semicolons', 'prénom;nom\nAna;Koch\nBen;Lang', ['Ana', 'Ben']],
    ['a table with headings, commas', 'First name,Last name\nAna,Koch\nBen,Lang', ['Ana', 'Ben']],
    ['a table whose nicknames go first', 'Nombre,Apodo\nAna María,Ani\nBenito,Beni', ['Ani', 'Beni']],
    ['a table without headings', '1;Ana\n2;Ben', ['Ana', 'Ben']],
    ['what a spreadsheet guards against reckoning', "name\n'-Ana\nBen", ['-Ana', 'Ben']],
    ['not at all', ' \n\t\n', []],
  ])('[RS1] %s', (_what, text, names) => {
    const reading = read(text)
    expect(namesIn(reading)).toEqual(names)
    expect(reading.faults).toEqual([])
  })

  test('[RS2] the teacher chooses another column, or all', () => {
    const table = 'Koch, Ana\nLang, Ben'
    expect(read(table).columns).toMatchObject({
      guess: 1,
      titles: null,
      samples: [
        ['Koch', 'Lang'],
        ['Ana', 'Ben'],
      ],
    })
    expect(namesIn(read(table, 0))).toEqual(['Koch', 'Lang'])
    expect(namesIn(read(table, 'all'))).toEqual(['Koch', 'Ana', 'Lang', 'Ben'])
    // A column that is not there any more is no wish.
    expect(namesIn(read(table, 7))).toEqual(['Ana', 'Ben'])
  })

  test('[RS2] a list has no columns to choose from', () => {
    expect(read('Ana, Ben, Cem').columns).toBeNull()
    expect(read('Ana\nBen').columns).toBeNull()
  })
})

describe('what is not taken is told', () => {
  test('[RS3] with its line and the way out, and the rest is taken', () => {
    const text = ['Ana', 'shithead', 'Ben!', 'Ana', 'Maximiliane Schmidthuber', 'Cem'].join('\n')
    const reading = read(text)
    expect(namesIn(reading)).toEqual(['Ana', 'Cem'])
    expect(reading.faults).toMatchObject([
      { code: 'roster/rude', line: 2, written: 'shithead' },
      { code: 'roster/unusual-letters', line: 3, written: 'Ben!' },
      { code: 'roster/twice', line: 4, firstLine: 1, offer: 'Ana 2' },
      { code: 'roster/too-long', line: 5, max: 16, offer: 'Maximiliane' },
    ])
  })

  test.each([
    ['the letter of the family name', 'Koch, Ana\nLang, Ana', 'Ana L.'],
    ['two letters where one is taken', 'Koch, Ana\nLang, Ana\n"", Ana L', 'Ana La.'],
    ['a number where there is no family name', 'Ana\nana', 'ana 2'],
    ['what nobody further down is called', 'Ana\nAna\nAna 2', 'Ana 3'],
  ])('[RS4] a second Ana is offered %s', (_what, text, offer) => {
    expect(read(text).faults[0]).toMatchObject({ code: 'roster/twice', offer })
  })

  test('[RS4] every offer, once it stands in the text, is taken', () => {
    let text = 'Koch, Ana\nLang, Ana\nLind, Ana\nLoew, Ana\nMeyer-Landrut, Konstantin-Alexander'
    for (let round = 0; round < 6; round++) {
      const [fault] = read(text).faults
      if (fault === undefined) break
      if (!('offer' in fault) || fault.offer === null) throw new Error(`no offer for ${JSON.stringify(fault)}`)
      text = withChanges(text, [{ ...fault, by: fault.offer }])
    }
    expect(read(text).faults).toEqual([])
    expect(new Set(read(text, 'all').names.map(({ line }) => line)).size).toBe(5)
  })

  test('[RS3] a name that the class has already', () => {
    expect(read('ana\nBen', null, ['Ana']).faults).toMatchObject([{ code: 'roster/twice', line: 1, firstLine: null }])
  })

  test('[RS3] a quotation mark that is never closed costs one line', () => {
    const reading = read('Ana\n"Ben\nCem')
    expect(namesIn(reading)).toEqual(['Ana', 'Cem'])
    expect(reading.faults).toMatchObject([{ code: 'roster/quote-open', line: 2 }])
  })

  test('[RS3] more than a class holds', () => {
    const many = Array.from({ length: ROSTER_PUPILS_MAX + 2 }, (_, index) => `Pupil ${index + 1}`)
    const reading = read(many.join('\n'))
    expect(reading.names.length).toBe(ROSTER_PUPILS_MAX)
    expect(reading.faults.map(({ code, written }) => [code, written])).toEqual([
      ['roster/too-many', many[ROSTER_PUPILS_MAX]],
      ['roster/too-many', many[ROSTER_PUPILS_MAX + 1]],
    ])
    const tooMuch = 'x'.repeat(ROSTER_TEXT_LENGTH_MAX + 1)
    expect(read(tooMuch)).toMatchObject({ names: [], faults: [{ code: 'roster/too-much-text' }] })
    expect(whatIsLeft(tooMuch, read(tooMuch))).toBe(tooMuch)
  })

  test('[RS5] what is not taken stays in the text as it was written', () => {
    const text = 'Ana\nBen!\n"sh it"\nCem\nAna'
    const left = whatIsLeft(text, read(text))
    expect(left).toBe('Ben!\n"sh it"\nAna')
    expect(read(left, null, ['Ana', 'Cem']).names).toEqual([])
  })
})

describe('full names', () => {
  test('[RS6] each has a shorter form, and those who share a given name a letter more', () => {
    const reading = read('Ana Koch\nAna Lang\nBen Ott\nCem\nDora K.\nEva 2\nSunny Otter')
    expect(reading.names.map(({ name, shorter }) => [name, shorter])).toEqual([
      ['Ana Koch', 'Ana K.'],
      ['Ana Lang', 'Ana L.'],
      ['Ben Ott', 'Ben'],
      ['Cem', null],
      ['Dora K.', null],
      ['Eva 2', null],
      ['Sunny Otter', null],
    ])
  })

  test('[RS6] a shorter form is nobody else’s name', () => {
    expect(read('Ana\nAna Koch').names[1].shorter).toBe('Ana K.')
    expect(read('Ana Koch', null, ['Ana']).names[0].shorter).toBe('Ana K.')
  })
})

test('[RS1] whatever is typed, every name is clean, free and where it says, and nothing else is lost', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      'Ana',
      'Ben',
      '"',
      ',',
      ';',
      '\t',
      '\n',
      '\r\n',
      ' ',
      'Koch, Ana',
      'Vorname',
      '\uFEFF',
      "'",
      '"Ö""',
    ),
    fc.string({ unit: 'grapheme', maxLength: 6 }),
  )
  const text = fc.array(piece, { maxLength: 30 }).map((pieces) => pieces.join(''))
  fc.assert(
    fc.property(text, fc.constantFrom<ColumnChoice | null>(null, 'all', 0, 1), (typed, wish) => {
      const reading = read(typed, wish)
      for (const { name, from, to, line } of reading.names) {
        expect(readStudentName(name)).toEqual({ ok: true, value: name })
        expect(from).toBeLessThan(to)
        expect(line).toBe(typed.slice(0, from).split(/\r\n|\r|\n/).length)
      }
      const places = [...reading.names, ...reading.faults].sort((one, other) => one.from - other.from)
      for (const [index, place] of places.slice(1).entries()) {
        expect(place.from).toBeGreaterThanOrEqual(places[index].to)
      }
      const keys = read(typed, 'all')
      expect(new Set(namesIn(keys)).size).toBe(keys.names.length)
    }),
    { seed: SEED, numRuns: 2_000 },
  )
})
