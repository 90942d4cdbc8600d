import { useEffect, useState } from "react"
import type { ConflictRule } from "../../service/conflicts"
import { type Cure, findCures } from "../../service/cures"
import type { Service } from "../../service/scheduleInput"

const remembered = new WeakMap<Service, Map<ConflictRule, readonly Cure[]>>()

/** The cures of a conflict, found after the screen is drawn; null until then. A change of the plan calls the search off. */
export function useCures(service: Service, rule: ConflictRule): readonly Cure[] | null {
  const [, setFound] = useState(0)
  const cures = remembered.get(service)?.get(rule) ?? null
  useEffect(() => {
    if (remembered.get(service)?.has(rule)) return
    const search = setTimeout(() => {
      const known = remembered.get(service) ?? new Map<ConflictRule, readonly Cure[]>()
      remembered.set(service, known.set(rule, findCures(service, rule)))
      setFound((count) => count + 1)
    })
    return () => clearTimeout(search)
  }, [service, rule])
  return cures
}
