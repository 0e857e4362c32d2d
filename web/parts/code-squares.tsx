/** A room code in squares, two syllables of three letters, as it is read aloud. */

import type { RoomCode } from '../../engine/contest/ids.ts'
import styles from './code-squares.module.css'

const SYLLABLE = 3

/** The side of a square is the custom property `--code-square`. */
export function CodeSquares({ code }: { code: RoomCode }) {
  return (
    <p className={styles.code}>
      <span className="visually-hidden">{[...code].join(' ')}</span>
      <Syllable letters={code.slice(0, SYLLABLE)} />
      <Syllable letters={code.slice(SYLLABLE)} />
    </p>
  )
}

function Syllable({ letters }: { letters: string }) {
  return (
    <span className={styles.syllable} aria-hidden="true">
      {[...letters].map((letter, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a letter has no identity but its place.
        <b key={place}>{letter}</b>
      ))}
    </span>
  )
}
