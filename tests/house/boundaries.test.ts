/** Arrows run one way: web -> engine, server -> engine, and nothing else. Rules HO: tests/RULES.md. */

import { readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { filesBelow, ROOT } from './files-below.ts'

const SCREENS = ['desk', 'board', 'bench', 'join']

type Import = { readonly from: string; readonly to: string }

/** Every import, export-from and dynamic import of a file: `to` is a path from the root, or the name of a package. */
function importsOf(from: string, text: string): Import[] {
  const found = [...text.matchAll(/(?:\bfrom\s+|\bimport\s+|\bimport\(\s*)['"]([^'"]+)['"]/g)].map((match) => match[1])
  return found.map((to) => ({ from, to: to.startsWith('.') ? relative(ROOT, resolve(ROOT, dirname(from), to)) : to }))
}

const codeBelow = (place: string) => filesBelow(place).filter((file) => /\.(ts|tsx|mjs)$/.test(file))
const importsBelow = (place: string) =>
  codeBelow(place).flatMap((file) => importsOf(file, readFileSync(join(ROOT, file), 'utf8')))
const told = (imports: Import[]) => imports.map(({ from, to }) => `${from} -> ${to}`)

describe('the house', () => {
  test('[HO1] the engine imports itself and zod, nothing else', () => {
    const imports = importsBelow('engine')
    expect(imports.length).toBeGreaterThan(50)
    expect(told(imports.filter(({ to }) => !to.startsWith('engine/') && to !== 'zod'))).toEqual([])
  })

  test('[HO1] the engine asks neither for the time nor for chance nor for the process', () => {
    const asking = codeBelow('engine').filter((file) => {
      const code = readFileSync(join(ROOT, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
      return /\bDate\.now|new Date\b|Math\.random|\bprocess\.|\bperformance\.|\bcrypto\.|\bwindow\.|\bdocument\./.test(
        code,
      )
    })
    expect(asking).toEqual([])
  })

  test('[HO2] server and web never import each other', () => {
    expect(told(importsBelow('server').filter(({ to }) => to.startsWith('web/')))).toEqual([])
    expect(told(importsBelow('web').filter(({ to }) => to.startsWith('server/') || to.startsWith('node:')))).toEqual([])
  })

  test('[HO3] screens never import screens; the drawing and the small parts know no screen', () => {
    const between = importsBelow('web').filter(({ from, to }) => {
      const [, fromRoom] = from.split('/')
      const [top, toRoom] = to.split('/')
      if (top !== 'web' || from.split('/').length < 3 || fromRoom === toRoom) return false
      const isIntoScreen = SCREENS.includes(toRoom)
      return isIntoScreen || (['cube', 'ui'].includes(fromRoom) && !['cube', 'ui', 'locales'].includes(toRoom))
    })
    expect(told(between)).toEqual([])
  })

  test('[HO3] only web/live touches the socket', () => {
    const imports = importsBelow('web').filter(
      ({ from, to }) => (to.startsWith('socket.io') || to === 'web/live/socket.ts') && !from.startsWith('web/live/'),
    )
    expect(told(imports)).toEqual([])
  })

  test('[HO1] the check itself sees every kind of import', () => {
    const text = `import a from 'x'\nimport type { B } from '../server/b.ts'\nexport { c } from "./c.ts"\nconst d = import('node:fs')\nimport './e.css'`
    expect(importsOf('engine/f.ts', text).map(({ to }) => to)).toEqual([
      'x',
      'server/b.ts',
      'engine/c.ts',
      'node:fs',
      'engine/e.css',
    ])
  })
})
