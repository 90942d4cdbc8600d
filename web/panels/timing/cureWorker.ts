import { type Closest, closestTogether } from "../../service/closestTogether"
import type { ConflictRule } from "../../service/conflicts"
import { type CureStep, searchCures } from "../../service/cures"
import type { Service } from "../../service/scheduleInput"

/** Works beside the screen, which goes on answering. Whoever has heard enough ends it. */
export type CureQuestion = { service: Service; rules: readonly ConflictRule[] }
export type CureNews = { kind: "step"; step: CureStep } | { kind: "end"; closest: Closest | null }

self.onmessage = ({ data: { service, rules } }: MessageEvent<CureQuestion>) => {
  const tell = (news: CureNews) => self.postMessage(news)
  for (const step of searchCures(service, rules)) tell({ kind: "step", step })
  tell({ kind: "end", closest: closestTogether(service) })
}
