/** A button that opens a file of the teacher's own computer. */

import { type ReactNode, useRef } from 'react'
import { Button } from '../../ui/button.tsx'

type OpenFileProps = { accept: string; onOpen: (file: File) => void; children: ReactNode }

export function OpenFile({ accept, onOpen, children }: OpenFileProps) {
  const field = useRef<HTMLInputElement>(null)
  return (
    <>
      <input
        ref={field}
        type="file"
        accept={accept}
        hidden
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? []
          // The same file again, after it was corrected, is another choice.
          event.currentTarget.value = ''
          if (file !== undefined) onOpen(file)
        }}
      />
      <Button onClick={() => field.current?.click()}>{children}</Button>
    </>
  )
}
