import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { fingerprintOf, keptParParts } from '../../../server/search/kept-par-parts.ts'

const SOLVED = [
  { pars: Uint8Array.of(0, 7, 12), words: Float64Array.of(0, 102_876_479, 2 ** 49 + 1) },
  { pars: Uint8Array.of(11), words: Float64Array.of(5) },
]

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-pars-'))
})
afterEach(() => {
  rmSync(folder, { recursive: true })
})

const onlyFile = () => join(folder, readdirSync(folder)[0])

describe('parts of the par tables that are kept', () => {
  test('[SE13] a part that was kept is found again as it was, and only that one', () => {
    const kept = keptParParts(folder, 'today')
    expect(kept.find([4, 5])).toEqual({ found: 'absent' })
    kept.keep([4, 5], SOLVED)
    expect(keptParParts(folder, 'today').find([4, 5])).toEqual({ found: 'whole', solved: SOLVED })
    expect(kept.find([2])).toEqual({ found: 'absent' })
    expect(readdirSync(folder)).toHaveLength(1)
  })

  test('[SE13] what an interrupted writing left behind is not taken for a part', () => {
    const kept = keptParParts(folder, 'today')
    kept.keep([2], SOLVED)
    writeFileSync(`${onlyFile()}.unfinished`, readFileSync(onlyFile(), 'utf8').slice(0, 40))
    expect(kept.find([2]).found).toBe('whole')
  })

  test.each([
    ['cut short', (text: string) => text.slice(0, -20)],
    ['with one digit changed', (text: string) => text.replace('102876479', '102876478')],
    ['without its first line', (text: string) => text.slice(text.indexOf('\n') + 1)],
    ['empty', () => ''],
    ['not of this kind', () => 'null\n[]\n'],
  ])('[SE13] a part that is %s is called damaged', (_, damage) => {
    const kept = keptParParts(folder, 'today')
    kept.keep([2], SOLVED)
    writeFileSync(onlyFile(), damage(readFileSync(onlyFile(), 'utf8')))
    expect(kept.find([2])).toEqual({ found: 'damaged' })
  })

  test('[SE13] a part that other code made is called older', () => {
    keptParParts(folder, 'yesterday').keep([2], SOLVED)
    expect(keptParParts(folder, 'today').find([2])).toEqual({ found: 'older' })
  })

  test('[SE13] code counts as other when any of its files is changed, but not the generated ones', () => {
    writeFileSync(join(folder, 'a.ts'), 'one')
    const before = fingerprintOf([folder])
    writeFileSync(join(folder, 'a-data.ts'), 'made')
    expect(fingerprintOf([folder])).toBe(before)
    writeFileSync(join(folder, 'a.ts'), 'two')
    expect(fingerprintOf([folder])).not.toBe(before)
  })
})
