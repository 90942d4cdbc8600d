import { useCallback, useEffect, useState } from "react"
import type { Closest } from "../../core/fixes/closestTogether"
import type { Fix } from "../../core/fixes/fix"
import type { Conflict, ConflictRule } from "../../core/schedule/conflicts"
import type { Service } from "../../core/schedule/scheduleInput"
import type { FixNews, FixQuestion } from "./fixWorker"

/** What is known of the cures of a service: all of them, or those found so far. */
export type FixSearch = {
  state: "searching" | "found" | "stopped" | "failed"
  done: number
  of: number
  cures: Readonly<Partial<Record<ConflictRule, readonly Fix[]>>>
  closest: Closest | null
}

const opening: FixSearch = { state: "searching", done: 0, of: 0, cures: {}, closest: null }
const remembered = new WeakMap<Service, FixSearch>()

/** Plans change with every keystroke: only one that stands still is searched. */
const restMs = 150

/** Looks for the cures of a service in a worker, until they are found, the plan changes or somebody says stop. */
export function useFixSearch(service: Service, conflicts: readonly Conflict[]) {
  const [search, setSearch] = useState<{ of: Service; at: FixSearch }>({ of: service, at: opening })
  const [turn, setTurn] = useState(0)
  const shown = search.of === service ? search.at : (remembered.get(service) ?? opening)
  const isStopped = shown.state === "stopped"
  // biome-ignore lint/correctness/useExhaustiveDependencies: the conflicts are those of the service; a turn begins anew
  useEffect(() => {
    if (remembered.has(service) || isStopped) return
    const show = (change: (at: FixSearch) => FixSearch) =>
      setSearch(({ of, at }) => ({ of: service, at: change(of === service ? at : opening) }))
    const rules = conflicts.map(({ code }) => code)
    const ending = (news: FixNews) =>
      show((at) => {
        const next = heard(at, news)
        if (next.state === "found") remembered.set(service, next)
        return next
      })
    return startWorker({ service, rules }, ending, () => show((at) => ({ ...at, state: "failed" })))
  }, [service, turn, isStopped])
  const stop = useCallback(
    () => setSearch(({ at }) => ({ of: service, at: { ...at, state: "stopped" } })),
    [service],
  )
  const again = useCallback(() => {
    setSearch({ of: service, at: opening })
    setTurn((count) => count + 1)
  }, [service])
  return { search: shown, stop, again }
}

function heard(at: FixSearch, news: FixNews): FixSearch {
  if (news.kind === "end") return { ...at, state: "found", closest: news.closest }
  const { done, of, found } = news.step
  return { ...at, done, of, cures: found ? { ...at.cures, [found.rule]: found.cures } : at.cures }
}

/** Starts the search once the plan has stood still, and gives the way to end it. */
function startWorker(question: FixQuestion, onNews: (news: FixNews) => void, onFault: () => void) {
  let worker: Worker | null = null
  const start = setTimeout(() => {
    worker = new Worker(new URL("./fixWorker.ts", import.meta.url), { type: "module" })
    worker.onmessage = ({ data }: MessageEvent<FixNews>) => {
      onNews(data)
      if (data.kind === "end") worker?.terminate()
    }
    worker.onerror = onFault
    worker.postMessage(question)
  }, restMs)
  return () => {
    clearTimeout(start)
    worker?.terminate()
  }
}
