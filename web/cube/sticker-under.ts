/** Which sticker of a turning cube was pressed. A drag holds the pointer, so the event itself names only the cube. */

/** @returns index 0..53 of the sticker under the pointer; null beside the cube */
export function stickerUnder({
  clientX,
  clientY,
}: {
  readonly clientX: number
  readonly clientY: number
}): number | null {
  const tile = document.elementFromPoint(clientX, clientY)?.closest('[data-sticker]')
  const index = tile?.getAttribute('data-sticker')
  return index == null ? null : Number(index)
}
