import { useEffect, useState } from "react"
import { browserShelf } from "../storage/browserShelf"
import { keepSetting, readSetting } from "../storage/shelfList"

/** A choice that this browser keeps; null until one was made. */
export function useKeptSetting<T extends string>(
  name: string,
  values: readonly T[],
): [chosen: T | null, choose: (value: T) => void] {
  const [chosen, setChosen] = useState<T | null>(null)
  useEffect(() => {
    readSetting(browserShelf, name).then(
      (kept) => setChosen((now) => now ?? values.find((value) => value === kept) ?? null),
      () => {},
    )
  }, [name, values])
  const choose = (value: T) => {
    setChosen(value)
    // A choice that cannot be kept still holds for today.
    keepSetting(browserShelf, name, value).catch(() => {})
  }
  return [chosen, choose]
}
