import { type ClientExport, clientAsBackup, openClient, writeClient } from "../../core/cards/clientFile"
import type { Problem } from "../../core/fields/problem"
import { fileStem } from "../../core/file/fileName"
import { compareBackup, type Restoring, takeInBackup } from "../../storage/backup"
import { browserShelf } from "../../storage/browserShelf"
import { eraseClient, noteRight, readClient } from "../../storage/clientRights"
import { NotKeptError } from "../../storage/notKept"
import { openKept, type Shelf } from "../../storage/shelf"
import { listPlans } from "../../storage/shelfList"
import { writeCopied } from "../clipboard"
import { nowHere } from "../nowHere"
import { openInto, type PlanStore, planStore } from "../planStore"
import { freshPlan } from "../salon/freshPlan"
import { readSalon } from "../salon/salonShelf"
import { saveFile } from "../saveFile"
import { words } from "../words"
import { clientPage } from "./clientPage"
import { todayHere } from "./nextVisit"

/** Hands out all that is kept of a client: as a file that Partline opens again, or as a page to read. */
export async function saveClient(cardId: string, form: "file" | "page", shelf: Shelf = browserShelf) {
  const client = await readClient(shelf, cardId, new Date().toISOString())
  if (!client) throw new NotKeptError({ code: "card-changed-elsewhere" })
  if (await handOut(client, form))
    await noteRight(shelf, { what: "exported", on: todayHere(), plans: client.plans.length })
}

function handOut(client: ClientExport, form: "file" | "page"): Promise<boolean> {
  const stem = fileStem(client.card.name, "client")
  if (form === "file") return saveFile(writeClient(client), `${stem}.partline.json`, "application/json")
  const page = clientPage(client, { words: words(), zone: nowHere().zone })
  return saveFile(page, `${stem}.html`, "text/html")
}

/** Erases a client for good; where one of the plans was on the screen, another comes there. */
export async function eraseForGood(
  cardId: string,
  { store, shelf }: { store: PlanStore; shelf: Shelf } = { store: planStore, shelf: browserShelf },
) {
  const gone = await eraseClient(shelf, cardId, todayHere())
  // What was copied may be of the client's head: no copy says of whose.
  writeCopied([])
  await readSalon(shelf)
  if (gone.includes(store.getState().present.id)) openInto(await planAfter(shelf), store)
}

/** The plan last in hand, or an empty one. */
async function planAfter(shelf: Shelf) {
  const [next] = await listPlans(shelf)
  const opened = next && (await openKept(shelf, next.id))
  return opened?.ok ? opened.plan : freshPlan(shelf)
}

export type LookedThroughClient = { ok: true; restoring: Restoring } | { ok: false; problem: Problem }

/** Looks through a client's file; nothing is changed by it. */
export async function lookThroughClient(
  file: Blob,
  shelf: Shelf = browserShelf,
): Promise<LookedThroughClient> {
  const opened = openClient(await file.text())
  if (!opened.ok) return opened
  return { ok: true, restoring: await compareBackup(shelf, clientAsBackup(opened.client)) }
}

/** Takes in what a client's file has and this browser has not, all of it or nothing. */
export const takeInClient = (restoring: Restoring, shelf: Shelf = browserShelf) =>
  takeInBackup(shelf, restoring)
