/** Solo practice: choose, then turn. No server, no room, no name; nothing leaves the page. */

import { useEffect, useState } from 'react'
import { SEED_BYTES } from '../../engine/chance/chacha-source.ts'
import { ChoosePractice } from './choose-practice.tsx'
import { fetchAhead } from './fetch-ahead.ts'
import { PlayPractice } from './play-practice.tsx'
import { newGame, type PracticeGame } from './practice-game.ts'
import { usePracticeSettings } from './practice-settings.ts'

export default function Practice() {
  const [settings, change] = usePracticeSettings()
  const [game, setGame] = useState<PracticeGame | null>(null)
  useEffect(fetchAhead, [])
  if (game === null) {
    return (
      <ChoosePractice settings={settings} onChange={change} onBegin={() => setGame(newGame(settings, newSeed()))} />
    )
  }
  return <PlayPractice first={game} newSeed={newSeed} onChoose={() => setGame(null)} />
}

/** The browser's own chance, which plain HTTP has as well. */
function newSeed(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(SEED_BYTES))
}
