/** The round leaves it to the child: a cube of one's own, or the one on the screen. Asked once a round. */

import { useTranslation } from 'react-i18next'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { OwnCubePage } from './own-cube-page.tsx'
import styles from './which-cube.module.css'

type WhichCubeProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'which-cube' }> }

const CUBES = ['own', 'screen'] as const

export function WhichCube({ face, ...page }: WhichCubeProps) {
  const { t } = useTranslation()
  return (
    <OwnCubePage {...page} round={face.round} state={page.live.status === 'away' ? t('bench:awayWaiting') : null}>
      <section className={styles.which} aria-labelledby="which-cube">
        <h2 id="which-cube">{t('bench:whichCube.title')}</h2>
        <div className={styles.cubes}>
          {CUBES.map((cube) => (
            <button
              key={cube}
              type="button"
              className={styles.cube}
              onClick={() => page.onChoose({ cube, ready: null })}
            >
              <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
                <path d={PICTURES[cube]} />
              </svg>
              <b>{t(`bench:whichCube.${cube}.title`)}</b>
              <span>{t(`bench:whichCube.${cube}.sentence`)}</span>
            </button>
          ))}
        </div>
      </section>
    </OwnCubePage>
  )
}

/** A cube held by two hands; a cube on a screen. */
const PICTURES = {
  own: 'M12 4 18 7v6.500l-6 3.200-6-3.200V7zM6 7l6 3.200L18 7M12 10.200v6.500M2.500 11.500V17l4.500 4M21.500 11.500V17L17 21',
  screen:
    'M3 4h18v12.500H3zM9 20.500h6M12 16.500v4M12 6.500l3 1.500v3.500l-3 1.600-3-1.600V8zM9 8l3 1.600L15 8M12 9.600v3.500',
} as const
