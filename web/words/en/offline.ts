import type { Tools } from "../tools"

/** How many plans and techniques of a backup there are, by what becomes of them here. */
type BackupFound = {
  added: number
  beside: number
  same: number
  unread: number
  techniques: number
  cards: number
}

/** The app on this device, the plans kept in it, and newer versions. */
export const offline = (t: Tools) => ({
  done: {},
  update: {
    ready: "A newer Partline is ready.",
    load: "Load it",
    later: "Later",
    refused: "Not now: another window is at the chair, or a change is not saved yet.",
  },
  kept: {
    title: "On this device",
    unknown:
      "This browser keeps plans, but not Partline itself: it opens only while its address can be reached.",
    keeping: "Partline is being copied to this device, to open without a network.",
    kept: "Partline opens without a network.",
    failed: "Partline could not be copied to this device: it opens only while its address can be reached.",
  },
  persistence: {
    unknown: "This browser does not say whether it spares the plans when space runs short.",
    granted: "This browser spares the plans when space runs short.",
    refused:
      "This browser may delete the plans when space runs short, or when it has not been used for a while.",
    ask: "Ask it to spare them",
  },
  /** All that this browser keeps, in one file. */
  backup: {
    title: "Backup",
    none: "No backup has been saved from this browser.",
    save: "Save a backup",
    open: "Open a backup…",
    file: "Backup file",
    holds:
      "One file with every plan, client card, technique and what your salon keeps. It holds every client’s health answers and is not locked: keep it where only you can read it. A service that runs at the chair is not in it.",
    /** What is in a backup that was opened, before it is taken in. */
    found: ({ added, beside, same, unread, techniques, cards }: BackupFound) =>
      [
        `${t.count(added, { one: "# plan is new here", other: "# plans are new here" })}.`,
        ...(same > 0
          ? [`${t.count(same, { one: "# plan is here already", other: "# plans are here already" })}.`]
          : []),
        ...(beside > 0
          ? [
              `${t.count(beside, { one: "# plan differs from the one here and comes beside it", other: "# plans differ from those here and come beside them" })}.`,
            ]
          : []),
        ...(unread > 0
          ? [
              `${t.count(unread, { one: "# plan cannot be read and is set aside", other: "# plans cannot be read and are set aside" })}.`,
            ]
          : []),
        `${t.count(techniques, { one: "# technique is new", other: "# techniques are new" })}.`,
        ...(cards > 0
          ? [`${t.count(cards, { one: "# client card is new", other: "# client cards are new" })}.`]
          : []),
        "Nothing here is replaced.",
      ].join(" "),
    takeIn: "Take them in",
    restored: "The backup is taken in.",
    today: "The last backup is from today.",
    days: ({ days }: { days: number }) =>
      t.count(days, { one: "The last backup is # day old.", other: "The last backup is # days old." }),
  },
  licences: "Licences",
})

export type OfflineWords = ReturnType<typeof offline>
