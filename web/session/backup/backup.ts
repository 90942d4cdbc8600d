import type { Problem } from "../../core/fields/problem"
import { type Backup, readBackup, writeBackup } from "../../core/file/backup"
import { joinedSalon, readSalonShelf } from "../../core/weighing/salonRecord"
import { compareBackup, partsForBackup, type Restoring, takeInBackup } from "../../storage/backup"
import { browserShelf } from "../../storage/browserShelf"
import type { Shelf } from "../../storage/shelf"
import { keepSetting, readSetting } from "../../storage/shelfList"
import { changeSalon } from "../salon/salonShelf"
import { saveFile } from "../saveFile"
import { readTechniques } from "../techniqueShelf"

const key = "lastBackup"

/** When the last backup of this browser was saved, ISO 8601; null where none was. */
export async function lastBackup(shelf: Shelf = browserShelf): Promise<string | null> {
  const made = await readSetting(shelf, key)
  return typeof made === "string" && !Number.isNaN(Date.parse(made)) ? made : null
}

/** Saves all that this browser keeps to one file. Gives when, or null where it was called off. */
export async function saveBackup(shelf: Shelf = browserShelf): Promise<string | null> {
  const madeAt = new Date().toISOString()
  const text = writeBackup({ madeAt, ...(await partsForBackup(shelf)) })
  const isOut = await saveFile(text, `partline-backup-${madeAt.slice(0, 10)}.json`, "application/json")
  if (!isOut) return null
  await keepSetting(shelf, key, madeAt)
  return madeAt
}

/** A backup that was looked through, with what taking it in would change here. */
export type LookedThrough = { backup: Backup; restoring: Restoring }

/** Looks through the file of a backup; nothing is changed by it. */
export async function lookThrough(
  file: Blob,
  shelf: Shelf = browserShelf,
): Promise<({ ok: true } & LookedThrough) | { ok: false; problem: Problem }> {
  const read = readBackup(await file.text())
  if (!read.ok) return read
  return { ok: true, backup: read.backup, restoring: await compareBackup(shelf, read.backup) }
}

/** Takes in what a backup has and this browser has not: all of its plans and techniques or none, then what the salon keeps. */
export async function restore({ backup, restoring }: LookedThrough, shelf: Shelf = browserShelf) {
  await takeInBackup(shelf, restoring)
  await readTechniques(shelf)
  const { salon } = readSalonShelf(backup.salon ?? undefined)
  await changeSalon((here) => joinedSalon(here, salon), shelf)
}
