import { useRef } from "react"

type Props = { words?: string; name?: string; onOpen: (file: File) => void }

/** Asks for a file. The same file may be chosen twice, once it has been mended. */
export function OpenFileButton({ words = "Open from a file…", name = "Plan file", onOpen }: Props) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {words}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={name}
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
