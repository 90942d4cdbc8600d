import type { Problem } from "./problem"

/** What a browser keeps. */
export type KeptThing = "plan" | "technique" | "salon" | "service" | "card"

/** Why a thing could not be kept in the browser, or is not there to be opened. */
export type NotKept =
  | { code: "changed-elsewhere" }
  | { code: "removed-elsewhere" }
  /** The card of a client, by another window. */
  | { code: "card-changed-elsewhere" }
  | { code: "merged-too-long" }
  /** Nothing is deleted whose service is going on. */
  | { code: "service-running" }
  /** The part that saves has not been loaded. */
  | { code: "keeper-missing" }
  /** Another window holds an older shelf open. */
  | { code: "blocked"; what: KeptThing }
  | { code: "full"; what: KeptThing }
  | { code: "newer-shelf"; what: KeptThing }
  | { code: "private-window"; what: KeptThing }
  | { code: "refused-by-browser"; what: KeptThing; error: string }
  /** It would not be read again. */
  | { code: "not-in-order"; what: KeptThing; problem: Problem }
  | { code: "unreadable"; problem: Problem }
  /** What the salon keeps cannot be read, and stays as it is until the next change sets it aside. */
  | { code: "salon-unreadable" }
