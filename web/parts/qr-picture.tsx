/**
 * An address as a QR code, drawn by ourselves: black on white in both themes, for cameras expect that,
 * with the four quiet modules around it that the standard (ISO/IEC 18004) asks for.
 */

import { encode } from 'uqr'
import styles from './qr-picture.module.css'

const QUIET_MODULES = 4

export function QrPicture({ address, label }: { address: string; label: string }) {
  const { data, size } = encode(address, { ecc: 'M', border: 0 })
  const side = size + 2 * QUIET_MODULES
  return (
    <svg
      className={styles.picture}
      viewBox={`${-QUIET_MODULES} ${-QUIET_MODULES} ${side} ${side}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect className={styles.paper} x={-QUIET_MODULES} y={-QUIET_MODULES} width={side} height={side} />
      <path className={styles.modules} d={darkRuns(data)} />
    </svg>
  )
}

/** One rectangle for each run of dark modules in a row. */
function darkRuns(rows: readonly (readonly boolean[])[]): string {
  let path = ''
  for (const [y, row] of rows.entries()) {
    let x = 0
    while (x < row.length) {
      let end = x
      while (end < row.length && row[end]) end += 1
      if (end > x) path += `M${x} ${y}h${end - x}v1h${x - end}z`
      x = end + 1
    }
  }
  return path
}
