import type { FolderClient } from "../../core/cards/clientFolder"
import { openPlan } from "../../core/file/planFile"
import { dayOfService } from "../../core/record/doneToday"
import { nowHere } from "../../session/nowHere"
import { openFolder } from "../input/openFolder"
import { done, refuseTyped, type Verb } from "../input/verb"

/** Whose files lie in a folder. */
export const clients: Verb = {
  usage: "FOLDER",
  takesFile: true,
  options: [],
  run(request) {
    const opened = openFolder(request)
    if (!opened.ok) return refuseTyped(request, [opened.problem])
    const { clients: found, noCard, unread } = opened.folder
    return done({ clients: found.map(rowOf), noCard, unread })
  },
}

function rowOf({ card, plans, files }: FolderClient) {
  const read = plans.map((text) => openPlan(text, () => [])).flatMap((each) => (each.ok ? [each.plan] : []))
  const { zone } = nowHere()
  const served = read.filter(({ service }) => service !== undefined).map((plan) => dayOfService(plan, zone))
  return {
    id: card.id,
    name: card.name,
    plans: plans.length,
    unreadPlans: plans.length - read.length,
    lastDay: served.sort().at(-1) ?? null,
    files,
  }
}
