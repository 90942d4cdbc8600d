import { useCallback } from "react"
import type { StoreApi } from "zustand/vanilla"

type Props<S> = { of: Pick<StoreApi<S>, "getState" | "subscribe">; words: (state: S) => string | number }

/** Words that go on with a store, written straight to the page: what one pass of React costs writes them all. */
export function Ticking<S>({ of, words }: Props<S>) {
  const keepWriting = useCallback(
    (place: HTMLElement) => {
      const text = new Text()
      let written: string | number | null = null
      const write = () => {
        const said = words(of.getState())
        if (said !== written) text.data = String(said)
        written = said
      }
      place.replaceChildren(text)
      write()
      return of.subscribe(write)
    },
    [of, words],
  )
  return <span ref={keepWriting} />
}
