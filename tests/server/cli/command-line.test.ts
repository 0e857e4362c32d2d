/** What holds for all commands: help, streams, signals. Rules CO: tests/RULES.md. */

import { spawn } from 'node:child_process'
import { closeSync, openSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { expect, test } from 'vitest'
import { CUBE, cube, PLACE } from './run-cube.ts'

function startCube(args: readonly string[], stdin: 'pipe' | 'ignore' | number = 'pipe') {
  const [node, ...front] = CUBE
  const child = spawn(node, [...front, ...args], { ...PLACE, stdio: [stdin, 'pipe', 'pipe'] })
  let [output, complaint] = ['', '']
  child.stdout?.setEncoding('utf8').on('data', (piece) => {
    output += piece
  })
  child.stderr?.setEncoding('utf8').on('data', (piece) => {
    complaint += piece
  })
  const ended = new Promise<{ exit: number | null; signal: string | null; complaint: string }>((resolve) =>
    child.on('close', (exit, signal) => resolve({ exit, signal, complaint })),
  )
  const hasSaid = async (text: string) => {
    while (!output.includes(text)) await new Promise((resolve) => setTimeout(resolve, 20))
  }
  return { child, ended, hasSaid, output: () => output }
}

test('[CO11] help is printed and is no fault', () => {
  const { exit, lines, complaint } = cube(['par', '--help'])
  expect({ exit, complaint }).toEqual({ exit: 0, complaint: '' })
  expect(lines[0]).toBe('usage: cube COMMAND [options]')
  for (const word of ['par', 'check', 'way', 'start', 'book', 'sheet', 'read', '--batch', '--budget']) {
    expect(lines.join('\n')).toContain(word)
  }
})

test.each(['sheet'])('[CO11] %s says that it comes later', (command) => {
  const { exit, lines, complaint } = cube([command, '--stage', '4'])
  expect({ exit, lines }).toEqual({ exit: 2, lines: [] })
  expect(complaint).toContain(`${command} is not there yet`)
})

test('[CO9] a line is answered as soon as it comes, not when the batch ends', async () => {
  const { child, ended, hasSaid } = startCube(['par', '--batch'])
  child.stdin?.write('1\tR F\n')
  await hasSaid('"par":2')
  child.stdin?.write('1-2\tR U F\n')
  await hasSaid('"par":3')
  child.stdin?.end()
  expect(await ended).toMatchObject({ exit: 0 })
})

test('[CO9] ten thousand lines are answered in order', () => {
  const words = ['R', 'R F', 'R F D', '', 'R F D L']
  const input = Array.from({ length: 10_000 }, (_, line) => `1\t${words[line % words.length]}`).join('\n')
  const { exit, lines } = cube(['par', '--batch'], input)
  expect(exit).toBe(0)
  expect(lines.map((line) => JSON.parse(line).par)).toEqual(
    Array.from({ length: 10_000 }, (_, line) => [1, 2, 3, 0, 4][line % 5]),
  )
})

test('[CO4] bytes that are no text are refused where they stand, and the next line is answered', () => {
  const { exit, lines } = cube(['par', '--batch'], Buffer.from('1\tR \xff\xfe F\n1\tR F\n', 'latin1'))
  expect(exit).toBe(1)
  expect(lines.map((line) => JSON.parse(line)).map(({ error, par }) => error ?? par)).toEqual([
    '--scramble: "\uFFFD\uFFFD" at character 3 is no turn',
    2,
  ])
})

test('[CO9] when nobody reads any more the command ends quietly', async () => {
  const { child, ended, hasSaid } = startCube(['check', '--batch'])
  child.stdin?.on('error', () => {})
  child.stdin?.write('1\tR\tR\n')
  await hasSaid('reached')
  child.stdout?.destroy()
  child.stdin?.write('1\tR\tR\n'.repeat(50_000))
  expect(await ended).toEqual({ exit: 1, signal: null, complaint: '' })
})

test('[CO9] Ctrl-C ends a search at once, and leaves whole lines only', async () => {
  const { child, ended, hasSaid, output } = startCube(['par', '--batch', '--budget', '3600'])
  child.stdin?.write("1\tR F\n1-3\tU' F L B R2 U D' R2 B' R D2 F' U' L2 U2 F2 R' L\n")
  await hasSaid('"par":2')
  await new Promise((resolve) => setTimeout(resolve, 500))
  child.kill('SIGINT')
  const { exit, signal, complaint } = await ended
  expect(signal ?? exit).toBe(signal === null ? 130 : 'SIGINT')
  expect(
    output()
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line).par),
  ).toEqual([2])
  expect(complaint).not.toContain('Error')
})

test('[CO9] standard input that is shut is an empty batch, and a folder is a fault', async () => {
  expect(await startCube(['par', '--batch'], 'ignore').ended).toEqual({ exit: 0, signal: null, complaint: '' })
  const folder = openSync(tmpdir(), 'r')
  const { exit, complaint } = await startCube(['par', '--batch'], folder).ended
  closeSync(folder)
  expect({ exit, complaint }).toEqual({ exit: 2, complaint: 'standard input cannot be read (EISDIR)\n' })
})

test('[CO3] an environment that cannot be used is said in one line, where it matters', () => {
  const run = cube(['par', '--stage', '1', '--to', '2', '--scramble', 'R U F'], '', { PORT: 'x' })
  expect({ exit: run.exit, lines: run.lines }).toEqual({ exit: 2, lines: [] })
  expect(run.complaint).toMatch(/^PORT is not usable: .*\n$/u)
})
