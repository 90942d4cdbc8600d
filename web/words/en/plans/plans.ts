import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { keys } from "./keys"
import { notKept } from "./notKept"

/** The top bar, the plans of this browser, saving, keys and the language. */
export const plans = (t: Tools, names: CommonWords) => ({
  /** What undo calls a change of this chapter. */
  done: {
    rename: "Rename the plan",
    "follow-scale": "Go by what the scale has taught",
  },
  notKept: notKept(t, names),
  keys,
  pageTitle: "Partline",
  untitled: "Plan without a name",
  /** The bar over every screen. */
  bar: {
    plans: "Plans…",
    skip: "Skip to the screen",
    named: (name: string) => `${name}: Plans…`,
    visit: "The service",
    screens: {
      client: "Client",
      placement: "Placement",
      formula: "Formula",
      timing: "Timing",
      sheets: "Sheets",
    },
    /** In the window's title. */
    pageTitle: (screen: string, plan: string) => `${screen}: ${plan} – Partline`,
    example: "An invented example.",
    startOwn: "Start your own plan",
    undo: "Undo",
    redo: "Redo",
    undoWhat: (what: string) => `Undo: ${what}`,
    redoWhat: (what: string) => `Redo: ${what}`,
  },
  undone: (what: string) => `Undone: ${what}`,
  doneAgain: (what: string) => `Redone: ${what}`,
  lastNotOpened: (why: string) => `The last plan could not be opened. ${why}`,
  /** Whether the plan on the screen is on the disk. */
  saving: {
    "not-yet": "Not saved yet",
    saving: "Saving…",
    saved: "Saved",
    notSaved: "Not saved.",
    asCopy: "Save as a copy",
    toFile: "Save to a file",
  },
  /** The dialog of all plans. */
  dialog: {
    title: "Plans",
    newPlan: "New plan",
    fromExample: "Start from the example",
    saveEverything: "Save everything to a file",
    saveForColleague: "Save for a colleague",
    fileHolds:
      "“Save everything to a file” holds the client’s health answers, patch tests and overrides, readable by anyone who has the file. “Save for a colleague” leaves them out.",
    stay: "Plans stay in this browser and leave it only as files. Save one to a file to take it with you, or to have a second copy.",
  },
  list: {
    title: "Saved in this browser",
    none: "None yet. A plan is saved as soon as something is drawn.",
    numbered: (title: string, number: number) => `${title} (${t.whole(number)})`,
    openNow: "open now",
    moment: (iso: string) => t.dayAndTime(Date.parse(iso)),
    details: (items: readonly string[]) => items.join(", "),
    rename: "Rename",
    renameNamed: (name: string) => `Rename ${name}`,
    newName: "New name",
    save: "Save",
    duplicate: "Duplicate",
    duplicateNamed: (name: string) => `Duplicate ${name}`,
    copyOf: (name: string) => (name.trim() ? `${name} copy` : "Copy"),
    delete: "Delete",
    deleteNamed: (name: string) => `Delete ${name}`,
    deleted: (name: string) => `${name} was deleted. It stays in the bin for 30 days.`,
    undo: "Undo",
    /** No more are shown at once. */
    more: (count: number) => t.count(count, { one: "Show # more", other: "Show # more" }),
    find: "Find a plan",
  },
  bin: {
    title: (count: number) => t.count(count, { one: "Bin: # plan", other: "Bin: # plans" }),
    days: (count: number) =>
      t.count(count, { one: "deleted for good in # day", other: "deleted for good in # days" }),
    putBack: "Put back",
    putBackNamed: (name: string) => `Put ${name} back`,
  },
  /** Plans that could not be read. */
  aside: {
    title: (count: number) =>
      t.count(count, { one: "# plan could not be read", other: "# plans could not be read" }),
    why: "They are kept as they were written. A newer Partline may read them; each can be saved to a file.",
    tryAgain: "Try again",
    save: "Save to a file",
    saveNamed: (name: string) => `Save ${name} to a file`,
  },
  /** The shelf cannot be written in; its plans can be taken out. */
  readOnly: {
    title: "These plans can be saved to files, not opened here",
    save: "Save to a file",
    saveNamed: (name: string) => `Save ${name} to a file`,
  },
  language: {
    title: "Language",
    unchecked: "translated without a native colourist; corrections welcome",
  },
  /** A part of the app that did not load, or broke. */
  parts: {
    waiting: "Loading…",
    failed: "This part could not be loaded.",
    stays: "The plan stays as it is.",
    tryAgain: "Try again",
    reload: "Reload the page",
  },
})

export type PlansWords = ReturnType<typeof plans>
