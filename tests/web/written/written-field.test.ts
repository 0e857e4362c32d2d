/** The field of a written solution as it is drawn. Rules WR: tests/RULES.md. */

import { createElement, createRef } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import { readWritten } from '../../../web/parts/written/read-written.ts'
import { WrittenField } from '../../../web/parts/written/written-field.tsx'
import { inEnglish } from '../english.ts'

beforeAll(inEnglish)

function drawn(text: string): string {
  return renderToStaticMarkup(
    createElement(WrittenField, {
      id: 'field',
      helpId: 'why',
      field: createRef<HTMLTextAreaElement>(),
      label: 'Turns',
      text,
      fault: readWritten(text).fault,
      onWrite: () => {},
    }),
  )
}

test('[WR5] what is no turn is marked at its place, and the field is described by the reason', () => {
  const page = drawn('R U f R')
  expect(page).toMatch(/R U <mark[^>]*>f<\/mark> R/)
  expect(page).toMatch(/<textarea[^>]*aria-invalid="true"[^>]*aria-describedby="why"/)
  expect(page).toMatch(/id="why"[^>]*>Write “F” instead of “f”/)
})

test('[WR5] what reads well is not marked', () => {
  const page = drawn('R U F R')
  expect(page).not.toContain('<mark')
  expect(page).toContain('aria-invalid="false"')
})
