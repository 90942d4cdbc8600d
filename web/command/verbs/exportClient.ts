import { type ClientExport, writeClient } from "../../core/cards/clientFile"
import { clientPage } from "../../session/cards/clientPage"
import { nowHere } from "../../session/nowHere"
import { clientMeant, openFolder } from "../input/openFolder"
import { done, type Request, refuseTyped, type Verb } from "../input/verb"

/** All that a folder holds of one client, as a file or as a page to read. */
export const exportClient: Verb = {
  usage: "FOLDER --client ID|NAME --out FILE.json|FILE.html",
  takesFile: true,
  options: ["client", "out"],
  run(request) {
    const { client: meant, out } = request.options
    if (out === undefined) return refuseTyped(request, [{ code: "client-out-missing" }])
    const opened = openFolder(request)
    if (!opened.ok) return refuseTyped(request, [opened.problem])
    const found = clientMeant(opened.folder, meant)
    if (!found.ok) return refuseTyped(request, [found.problem])
    const { card, plans } = found.client
    const madeAt = new Date(Date.parse(nowHere().moment)).toISOString()
    const text = written({ madeAt, card, plans }, out, request)
    try {
      request.desk.writeBytes(out, new TextEncoder().encode(text))
    } catch {
      return refuseTyped(request, [{ code: "cannot-write", path: out }])
    }
    return done({ out, id: card.id, plans: plans.length, unread: opened.folder.unread })
  },
}

const written = (client: ClientExport, out: string, { words }: Request) =>
  /\.html?$/i.test(out) ? clientPage(client, { words, zone: nowHere().zone }) : writeClient(client)
