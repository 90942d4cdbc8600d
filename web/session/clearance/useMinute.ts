import { useEffect, useState } from "react"

const everyMs = 60_000

/** A number that is another one with each minute, for what depends on the hour. */
export function useMinute(): number {
  const [minute, setMinute] = useState(0)
  useEffect(() => {
    const timer = setInterval(() => setMinute((before) => before + 1), everyMs)
    return () => clearInterval(timer)
  }, [])
  return minute
}
