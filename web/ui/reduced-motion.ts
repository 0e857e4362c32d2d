/** Whether the reader asks for stillness. Asked at each use, for it can change while a lesson runs. */
export function wantsStillness(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches
}
