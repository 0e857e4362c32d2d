/**
 * Orders of groups of turns, worked out by GAP (package gap-core) from the sticker permutations that the engine exports.
 *
 * Sources of the values: OEIS A080602 and A338883 (whole group), A080628 (<U,R>), A080627 (squares), A080619 (slices);
 * D. Singmaster, Notes on Rubik's Magic Cube, 1980 (chain of four subgroups); the others computed with GAP 4.12.1 from
 * a model of its own.
 */

import { expect, test } from 'vitest'
import { CORNER_PLACES, EDGE_PLACES, type PiecePlace } from '../../engine/cube/piece-places.ts'
import { stickersThatMatter } from '../../engine/method/goals.ts'
import { STAGES } from '../../engine/method/stages.ts'
import { askGap } from './gap.ts'

const FACES = 'U R F D L B'

const GROUPS: ReadonlyArray<readonly [name: string, generators: string, order: string]> = [
  ['the six faces', FACES, '43252003274489856000'],
  ['the six faces and the rotations', `${FACES} x y z`, '1038048078587756544000'],
  ['five faces, which do what six do', 'U R F L B', '43252003274489856000'],
  ['U and R', 'U R', '73483200'],
  ['U and R2', 'U R2', '14400'],
  ['U2 and R2', 'U2 R2', '12'],
  ['U and D', 'U D', '16'],
  ['half turns of U, D, R, L', 'U2 D2 R2 L2', '192'],
  ['half turns of U, R, F', 'U2 R2 F2', '2592'],
  ['half turns of all faces', 'U2 R2 F2 D2 L2 B2', '663552'],
  ['U, D and half turns', 'U D R2 F2 L2 B2', '19508428800'],
  ['U, R and F', 'U R F', '170659735142400'],
  ['U, R and L', 'U R L', '159993501696000'],
  ['U, D and R', 'U D R', '159993501696000'],
  ['U, R, F and L', 'U R F L', '1802166803103744000'],
  ['U, D, R and L', 'U D R L', '21119142223872000'],
  ['the slices', 'M E S', '768'],
  ['half turns of the slices', 'M2 E2 S2', '8'],
  ['opposite faces turned against each other', 'R*L U*D F*B', '6144'],
  ['U and M', 'U M', '184320'],
  ['the rotations', 'x y z', '24'],
]

/** Generators stand apart by spaces; a star joins turns that are done together. */
const groupOf = (generators: string) => {
  const product = (word: string) => word.split('*').map((name) => `t("${name}")`)
  return `Group(${generators
    .split(' ')
    .map((word) => product(word).join('*'))
    .join(', ')})`
}

const orders = askOnce(() =>
  askGap(
    '',
    GROUPS.map(([, generators]) => `Size(${groupOf(generators)})`),
  ),
)

test.each(GROUPS.map(([name, , order], index) => [name, order, index] as const))(
  '[CU6] the order of the group of %s is %s',
  (_, order, index) => {
    expect(orders()[index]).toBe(order)
  },
)

/**
 * What is left of the group of the faces when only some pieces are looked at, or when some have to stay.
 * Source: corners, OEIS A080630; the puzzle of two layers, OEIS A079761; the centre,
 * encyclopaedias; the others computed with GAP 4.12.1 from a model of its own.
 */
const PAIRS = ['DFR FR', 'DRB BR', 'DBL BL']
const PARTS: ReadonlyArray<readonly [what: string, question: string, answer: string]> = [
  ['the order of the corners alone', 'Size(cornersOf(g))', '88179840'],
  ['the order of the edges alone', 'Size(edgesOf(g))', '980995276800'],
  ['the order of the puzzle of two layers', 'Size(cornersOf(Group(t("U"), t("R"), t("F"))))', '3674160'],
  ['the order of what turns pieces in their places', 'Size(inPlaces)', '4478976'],
  ['the order of the centre', 'Size(Centre(g))', '2'],
  ['the index of the derived subgroup', 'Index(g, DerivedSubgroup(g))', '2'],
  ['the number of states of a corner with its three edges', `Index(g, ${keeping('DFR DF DR FR')})`, '253440'],
  ['the order of what the cross and a pair leave free', `Size(${keeping(crossAndPairs(1))})`, '592568524800'],
  ['the order of what the cross and two pairs leave free', `Size(${keeping(crossAndPairs(2))})`, '2015539200'],
  ['the order of what the cross and three pairs leave free', `Size(${keeping(crossAndPairs(3))})`, '9331200'],
]

function crossAndPairs(nPairs: number): string {
  return ['DF DR DB DL', ...PAIRS.slice(0, nPairs)].join(' ')
}

function keeping(places: string): string {
  return `Stabilizer(g, ${gapList(places.split(' ').flatMap(stickersAt))}, OnTuples)`
}

function stickersAt(name: string): readonly number[] {
  const place = [...CORNER_PLACES, ...EDGE_PLACES].find((each) => each.name === name)
  if (place === undefined) throw new Error(`${name} is no place`)
  return place.stickers
}

function gapList(indexes: readonly number[]): string {
  return `[${indexes.map((index) => index + 1).join(', ')}]`
}

const partsOfGroup = askOnce(() => {
  const stickersOfAll = (places: readonly PiecePlace[]) => gapList(places.flatMap(({ stickers }) => [...stickers]))
  const setsOf = (places: readonly PiecePlace[]) =>
    places.map(({ stickers }) => gapList([...stickers].sort((a, b) => a - b))).join(', ')
  return askGap(
    [
      `g := ${groupOf(FACES)};;`,
      `cornersOf := group -> Action(group, ${stickersOfAll(CORNER_PLACES)});;`,
      `edgesOf := group -> Action(group, ${stickersOfAll(EDGE_PLACES)});;`,
      `places := [${setsOf([...CORNER_PLACES, ...EDGE_PLACES])}];;`,
      'inPlaces := Kernel(ActionHomomorphism(g, places, OnSets));;',
    ].join('\n'),
    PARTS.map(([, question]) => question),
  )
})

test.each(PARTS.map(([what, , answer], index) => [what, answer, index] as const))(
  '[CU6] %s is %s',
  (_, answer, index) => {
    expect(partsOfGroup()[index]).toBe(answer)
  },
)

/**
 * How many arrangements each stage can start from: positions that keep the goals before it, counted up to what keeps its
 * own goal. The stickers are those that the engine says matter.
 * Source: 190,080; 136,080; 26,880 by counting places (12 * 11 * 10 * 9 * 2^4 and so on); 8, 27, 24, 12 common practice;
 * all computed with GAP 4.12.1.
 */
const ARRANGEMENTS = [
  [1, '190080'],
  [2, '136080'],
  [3, '26880'],
  [4, '8'],
  [5, '27'],
  [6, '24'],
  [7, '12'],
] as const

const arrangements = askOnce(() => {
  const points = STAGES.map((stage) =>
    [...stickersThatMatter(stage)].flatMap((matters, index) => (matters ? [index] : [])),
  )
  const isTop = (index: number) => index < 9
  const [, , layers, cross, face, corners] = points
  const topOf = (indexes: readonly number[], others: readonly number[]) =>
    gapList(indexes.filter((index) => isTop(index) && !others.includes(index)))
  return askGap(
    [
      `g0 := ${groupOf(FACES)};;`,
      `g1 := Stabilizer(g0, ${gapList(points[0])}, OnTuples);;`,
      `g2 := Stabilizer(g1, ${gapList(points[1])}, OnTuples);;`,
      `g3 := Stabilizer(g2, ${gapList(layers)}, OnTuples);;`,
      // Stages 4 and 5 ask for a colour on top and not for a piece: the stickers may go round among themselves.
      `g4 := Stabilizer(g3, ${topOf(cross, layers)}, OnSets);;`,
      `g5 := Stabilizer(g4, ${topOf(face, cross)}, OnSets);;`,
      `g6 := Stabilizer(g5, ${gapList(corners.filter((index) => !isTop(index)))}, OnTuples);;`,
      'g7 := TrivialSubgroup(g6);;',
    ].join('\n'),
    [
      'Index(g0, g1)',
      'Index(g1, g2)',
      'Index(g2, g3)',
      'Index(g3, g4)',
      'Index(g4, g5)',
      'Index(g5, g6)',
      'Index(g6, g7)',
    ],
  )
})

test.each(ARRANGEMENTS)('[ST7] stage %i has %s arrangements', (stage, nArrangements) => {
  expect(arrangements()[stage - 1]).toBe(nArrangements)
})

/** One run of GAP serves all rows; each row fails with its message if the run fails. */
function askOnce(ask: () => string[]): () => string[] {
  let answers: string[] | undefined
  return () => {
    answers ??= ask()
    return answers
  }
}
