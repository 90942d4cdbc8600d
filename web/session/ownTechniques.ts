import { createStore } from "zustand/vanilla"
import type { Technique } from "../../presets/techniques/technique"
import { newId } from "../core/document/newId"
import { type OpenedTechnique, openTechnique, saveTechnique } from "../core/file/techniqueFile"
import { isHouseId } from "../core/technique/techniqueChoices"
import { announce } from "./announcements"
import { keepTechnique, readTechniques, removeTechnique, techniqueStore } from "./techniqueShelf"
import { words } from "./words"

/** The technique taken off last, for as long as it can be put back. */
export const removedStore = createStore<{ removed: Technique | null }>(() => ({ removed: null }))

export async function keepOwn(technique: Technique) {
  const isKept = await keepTechnique(technique)
  if (isKept) announce(words().techniques.own.saved(technique.name))
  return isKept
}

/** Keeps a technique that came from elsewhere, once; another one with its id stays beside it. */
export async function takeIn(technique: Technique): Promise<boolean> {
  await readTechniques()
  const { own } = techniqueStore.getState()
  if (own.some((each) => isSame(each, technique))) {
    announce(words().techniques.own.savedAlready(technique.name))
    return true
  }
  const isTaken = isHouseId(technique.id) || own.some(({ id }) => id === technique.id)
  return keepOwn(isTaken ? { ...technique, id: newId() } : technique)
}

const isSame = (a: Technique, b: Technique) =>
  saveTechnique({ ...a, id: "same" }) === saveTechnique({ ...b, id: "same" })

const mostBytes = 20 * 1024 * 1024

/** Keeps the technique of a file; a file with problems changes nothing. */
export async function takeInFile(file: Blob): Promise<OpenedTechnique> {
  // A file that large is refused by its size; nothing of it is read.
  const opened = openTechnique(file.size > mostBytes ? " ".repeat(mostBytes) : await file.text())
  if (opened.ok) await takeIn(opened.technique)
  return opened
}

export async function removeOwn(technique: Technique) {
  if (!(await removeTechnique(technique.id))) return
  removedStore.setState({ removed: technique })
  announce(words().techniques.own.deleted(technique.name))
}

export async function putBack(technique: Technique) {
  if (await keepOwn(technique)) removedStore.setState({ removed: null })
}
