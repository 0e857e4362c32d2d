/**
 * Names for children who type none: a kind word and an animal or a plant, "Sunny Otter". Nobody is made fun of: no word is
 * about size, speed or skill, none is a given name, a colour of the cube, or sounds like another.
 * Source: own lists.
 */

import { below, type RandomSource } from '../chance/random-source.ts'
import { assert } from '../result.ts'
import { NAME_LENGTH_MAX } from './limits.ts'

const KIND_WORDS = `
  Able Brave Bright Calm Cheery Clever Cosy Curious Dreamy Eager Fair Friendly Gentle Glad Happy Helpful Honest Humble
  Jolly Keen Kind Lively Loyal Lucky Mellow Merry Modest Musical Noble Patient Playful Polite Proud Ready Serene
  Sparkly Steady Sunny Tidy Trusty Warm Wise Witty Zesty
`
const ANIMALS_AND_PLANTS = `
  Alpaca Badger Bison Cricket Dolphin Falcon Finch Firefly Gecko Gibbon Hedgehog Heron Ibex Kestrel Koala Lark Lemur
  Lynx Marmot Meerkat Newt Ocelot Octopus Osprey Otter Panda Penguin Puffin Quokka Reindeer Seal Starling Stork Swan
  Tapir Toucan Turtle Wombat Yak Zebra
  Acorn Alder Almond Apricot Bamboo Birch Cedar Chestnut Clover Coconut Larch Lotus Lupin Mango Maple Marigold Melon
  Orchid Palm Papaya Peony Primrose Quince Spruce Tulip Walnut
`

const FIRST = words(KIND_WORDS)
const SECOND = words(ANIMALS_AND_PLANTS)
/** All names, each once: some 2,800, nine for each seat of a full room. */
const ALL_NAMES = FIRST.flatMap((first) =>
  SECOND.map((second) => `${first} ${second}`).filter((name) => name.length <= NAME_LENGTH_MAX),
)

/** Draws before the free names are gone through one by one; a room is a ninth full of them at most. */
const DRAWS_MAX = 20

/**
 * @param random each free name is equally likely
 * @param isTaken whether a name is in use, however it is written; a room has seats for a ninth of all names
 * @returns a name of at most `NAME_LENGTH_MAX` characters that `readStudentName` takes as it is
 * Asserts that one is free.
 */
export function friendlyName(random: RandomSource, isTaken: (name: string) => boolean): string {
  for (let draw = 0; draw < DRAWS_MAX; draw++) {
    const name = ALL_NAMES[below(random, ALL_NAMES.length)]
    if (!isTaken(name)) return name
  }
  const free = ALL_NAMES.filter((name) => !isTaken(name))
  assert(free.length > 0, 'more friendly names than seats')
  return free[below(random, free.length)]
}

/** Is it one of the names that are given here, or the like? So that it is not taken for a given name and a family name. */
export function isFriendlyName(name: string): boolean {
  const [first, second, ...more] = name.split(' ')
  return FIRST.includes(first) && SECOND.includes(second) && more.every((word) => /^\d+$/.test(word))
}

function words(text: string): string[] {
  return text.trim().split(/\s+/)
}
