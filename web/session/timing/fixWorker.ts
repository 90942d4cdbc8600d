import { type Closest, closestTogether } from "../../core/fixes/closestTogether"
import { type FixStep, searchFixes } from "../../core/fixes/fixes"
import type { ConflictRule } from "../../core/schedule/conflicts"
import type { Service } from "../../core/schedule/scheduleInput"

/** Works beside the screen, which goes on answering. Whoever has heard enough ends it. */
export type FixQuestion = { service: Service; rules: readonly ConflictRule[] }
export type FixNews = { kind: "step"; step: FixStep } | { kind: "end"; closest: Closest | null }

self.onmessage = ({ data: { service, rules } }: MessageEvent<FixQuestion>) => {
  const tell = (news: FixNews) => self.postMessage(news)
  for (const step of searchFixes(service, rules)) tell({ kind: "step", step })
  tell({ kind: "end", closest: closestTogether(service) })
}
