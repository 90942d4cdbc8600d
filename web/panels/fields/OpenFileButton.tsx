import { useRef } from "react"

import { useWords } from "../../session/words"

type Props = { words?: string; name?: string; accept?: string; onOpen: (file: File) => void }

/** Asks for a file. The same file may be chosen twice, once it has been mended. */
export function OpenFileButton({ words, name, accept = ".json,application/json", onOpen }: Props) {
  const { fields } = useWords().common
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {words ?? fields.openFile}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={name ?? fields.planFile}
        accept={accept}
        onChange={({ target }) => {
          const file = target.files?.[0]
          target.value = ""
          if (file) onOpen(file)
        }}
      />
    </>
  )
}
