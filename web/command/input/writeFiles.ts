import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Desk } from "./verb"

export type Made = { path: string; bytes: Uint8Array }

/** Writes what has all been made; null when everything is written, else what could not be and what had been. */
export function writeFiles(files: readonly Made[], desk: Desk, folder?: string): ArgumentProblem | null {
  const written: string[] = []
  let path = folder ?? ""
  try {
    if (folder !== undefined) desk.folders?.make?.(folder)
    for (const file of files) {
      path = file.path
      desk.writeBytes(file.path, file.bytes)
      written.push(file.path)
    }
    return null
  } catch {
    return { code: "cannot-write-one", path, written }
  }
}

/** Lets whoever else waits have a turn between two pieces of long work. */
export const pause = () => new Promise<void>((go) => setTimeout(go))
