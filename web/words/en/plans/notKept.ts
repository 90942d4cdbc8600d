import type { KeptThing, NotKept } from "../../../core/fields/notKept"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { problems } from "../problems/problems"

/** Why a thing could not be kept in the browser, and what to do. */
export const notKept = (t: Tools, names: CommonWords): Sentences<NotKept> => ({
  "changed-elsewhere":
    "This plan was changed in another tab or window. Nothing was written over it: save yours as a copy, or open the other one again.",
  "removed-elsewhere":
    "This plan was deleted in another tab or window. Save yours as a copy if you still need it.",
  "card-changed-elsewhere":
    "This card was changed in another tab or window. Nothing was written over it: it is shown as it stands now. Enter your change again.",
  "merged-too-long": "Together the two cards are longer than one card can be. Shorten a note first.",
  "service-running": "A service is going on at this plan’s chair. End it before you delete the plan.",
  blocked: ({ what }) =>
    `Another window with an older Partline is open. Close it, or save the ${things[what]} to a file.`,
  full: ({ what }) =>
    `Browser storage is full. Save the ${things[what]} to a file, then delete plans you no longer need.`,
  "newer-shelf": ({ what }) =>
    `A newer Partline has used this browser’s storage. Save the ${things[what]} to a file and reload the page.`,
  "private-window": ({ what }) =>
    `Private windows do not save. Save the ${things[what]} to a file before you close it.`,
  "refused-by-browser": ({ what, error }) =>
    error
      ? `The browser could not save the ${things[what]} (${error}). Save it to a file and reload the page.`
      : `The browser could not save the ${things[what]}. Save it to a file and reload the page.`,
  "not-in-order": ({ what, problem }) =>
    `The ${things[what]} was not saved, because it could not be read again. ${problems(t, names).sentence(problem)}`,
  unreadable: ({ problem }) => problems(t, names).sentence(problem),
  "salon-unreadable":
    "Some of the salon’s saved data cannot be read. At the next change it is set aside; the rest stays.",
  "keeper-missing":
    "The part of Partline that saves could not be loaded. Save the plan to a file, then reload the page.",
})

const things: Record<KeptThing, string> = {
  plan: "plan",
  technique: "technique",
  salon: "salon’s data",
  service: "service",
  card: "client card",
}
