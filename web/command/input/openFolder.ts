import {
  type ClientFolder,
  type FolderClient,
  type FolderFile,
  readFolder,
} from "../../core/cards/clientFolder"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import { plainLetters } from "../../core/text/plainLetters"
import type { Request } from "./verb"

export type OpenedFolder = { ok: true; files: readonly FolderFile[]; folder: ClientFolder }
type Refused = { ok: false; problem: ArgumentProblem }

/** The files of the folder the person named that may be Partline's, and the clients in them. */
export function openFolder({ file: path, desk }: Request): OpenedFolder | Refused {
  try {
    const names = (desk.folders?.list(path) ?? []).filter((name) => /\.json$/i.test(name)).sort()
    if (!desk.folders) throw new Error("there are no folders here")
    const files = names.map((name) => ({ name, text: desk.readText(pathIn(path, name)) }))
    return { ok: true, files, folder: readFolder(files) }
  } catch {
    return { ok: false, problem: { code: "cannot-read-folder", folder: path } }
  }
}

export const pathIn = (folder: string, name: string) => `${folder.replace(/\/+$/, "")}/${name}`

/** The client the person means, by id or, where it is nobody else's, by name. */
export function clientMeant(
  { clients }: ClientFolder,
  client: string | undefined,
): { ok: true; client: FolderClient } | Refused {
  if (client === undefined) return { ok: false, problem: { code: "client-missing" } }
  const byId = clients.find(({ card }) => card.id === client)
  const named = clients.filter(({ card }) => plainLetters(card.name) === plainLetters(client))
  const found = byId ? [byId] : named
  if (found.length === 1) return { ok: true, client: found[0] }
  return {
    ok: false,
    problem:
      found.length === 0
        ? { code: "client-unknown", client }
        : { code: "client-several", client, ids: found.map(({ card }) => card.id) },
  }
}
