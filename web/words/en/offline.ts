import type { Tools } from "../tools"

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
  backup: {
    today: "The last backup is from today.",
    days: ({ days }: { days: number }) =>
      t.count(days, { one: "The last backup is # day old.", other: "The last backup is # days old." }),
  },
  licences: "Licences",
})

export type OfflineWords = ReturnType<typeof offline>
