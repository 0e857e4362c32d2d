/** What the teacher shows, on the projector: the same picture as on every bench. */

import type { Showing } from '../../engine/wire/shown.ts'
import { CubeFace } from '../parts/showing/cube-face.tsx'
import { ReviewFace } from '../parts/showing/review-face.tsx'
import styles from './shown-page.module.css'

export function ShownPage({ showing: { shown, at } }: { readonly showing: Showing }) {
  return (
    <main className={styles.page}>
      {shown.kind === 'cube' ? (
        <CubeFace shown={shown} at={at} marks="plain" />
      ) : (
        <ReviewFace shown={shown} at={at} marks="plain" />
      )}
    </main>
  )
}
