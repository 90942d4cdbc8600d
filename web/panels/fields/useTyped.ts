import { useEffect, useState } from "react"

/** What a field shows while someone types in it; what the plan says instead takes its place. */
export function useTyped(value: string) {
  const [text, setText] = useState(value)
  useEffect(() => setText(value), [value])
  return [text, setText] as const
}
