import { type FolderClient, folderWithout } from "../../core/cards/clientFolder"
import { clientMeant, type OpenedFolder, openFolder, pathIn } from "../input/openFolder"
import { done, type Outcome, type Request, refuseTyped, type Verb } from "../input/verb"

/** Erases one client from a folder: said first, and done only where the person is sure. */
export const erase: Verb = {
  usage: "FOLDER --client ID|NAME --sure yes",
  takesFile: true,
  options: ["client", "sure"],
  run(request) {
    const { client: meant, sure } = request.options
    const opened = openFolder(request)
    if (!opened.ok) return refuseTyped(request, [opened.problem])
    const found = clientMeant(opened.folder, meant)
    if (!found.ok) return refuseTyped(request, [found.problem])
    const { card, planIds, files } = found.client
    if (sure !== "yes")
      return refuseTyped(request, [{ code: "sure-missing", name: card.name, plans: planIds.length, files }])
    return eraseFrom(opened, found.client, request)
  },
}

/** Backups first: a file that cannot be written keeps the others from going, and it can be tried again. */
function eraseFrom({ files, folder }: OpenedFolder, client: FolderClient, request: Request): Outcome {
  const { desk, file: path } = request
  const { removed, rewritten } = folderWithout(files, client)
  const steps = [
    ...rewritten.map(({ name, text }) => ({
      name,
      run: () => desk.writeBytes(pathIn(path, name), new TextEncoder().encode(text)),
    })),
    ...removed.map((name) => ({ name, run: () => desk.folders?.remove(pathIn(path, name)) })),
  ]
  for (const { name, run } of steps) {
    try {
      run()
    } catch {
      return refuseTyped(request, [{ code: "cannot-erase", path: pathIn(path, name) }])
    }
  }
  return done({
    plans: client.planIds.length,
    removed,
    rewritten: rewritten.map(({ name }) => name),
    unread: folder.unread,
  })
}
