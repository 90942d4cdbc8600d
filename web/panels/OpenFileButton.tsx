import { useRef } from "react"

/** Asks for a file. The same file may be chosen twice, once it has been mended. */
export function OpenFileButton({ onOpen }: { onOpen: (file: File) => void }) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        Open from a file…
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label="Plan file"
        accept=".json,application/json"
        onChange={({ target }) => {
          const file = target.files?.[0]
          target.value = ""
          if (file) onOpen(file)
        }}
      />
    </>
  )
}
