import type { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import type { TriedHead } from "../../../../presets/client/headSizes"
import type { MeasureLabel, TechniqueWay } from "../../../../presets/techniques/technique"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { draft } from "./draft"
import { frames } from "./frames"
import type { HouseWords } from "./houseWords"
import { others } from "./others"
import { stepWords } from "./stepWords"

/** Techniques: those of the house in words, and the panel that shows them beside the salon's own. */
export const techniques = (t: Tools, names: CommonWords) => {
  const steps = stepWords(t)
  const house: HouseWords = { ...frames(t, steps), ...others(t, steps) }
  const sections = (count: number) => t.count(count, { one: "# section", other: "# sections" })
  return {
    done: {},
    house,
    /** What hair that a technique leaves out is called. */
    leftOut: { veil: "Veil", "baby-hairs": "Baby hairs", edges: "Edges" },
    measures: {
      depth: "Depth",
      "slice-depth": "Slice depth",
      "weave-depth": "Weave depth",
      "backcomb-depth": "Backcomb depth",
      gap: "Gap",
      rows: "Rows",
      "rows-a-side": "Rows a side",
      "slices-a-side": "Slices a side",
      weaves: "Weaves",
      "rows-over-forehead": "Rows over the forehead",
      "rows-on-heavy-side": "Rows on the heavy side",
    } satisfies Record<MeasureLabel, string>,
    ways: {
      only: "As it is",
      "bright-edge": "Brightest at the edge",
      "soft-edge": "Softest at the edge",
      "in-turn": "Slice and weave in turn",
      melted: "Backcombed melt",
      "parted-left": "Parted on the left",
      "parted-right": "Parted on the right",
      "heavy-right": "Heavy on the right",
      "heavy-left": "Heavy on the left",
    } satisfies Record<TechniqueWay, string>,
    draft: draft(t, names),

    panel: {
      startFrom: "Start from a technique",
      title: "Techniques",
      own: "Your own",
      /** What a technique comes to on this head. */
      comesTo: ({ foils, low, high, minLow, minHigh, withoutRoom }: ComesTo) => {
        const told = [
          t.count(foils, { one: "# foil", other: "# foils" }),
          t.gramsRange({ low, mid: low, high }),
          `${t.minuteRange(minLow, minHigh)} to place`,
        ].join(", ")
        return withoutRoom > 0 ? `${told}; no room here for ${sections(withoutRoom)}` : told
      },
      read: "Steps and options",
      readOf: (name: string) => `Steps and options of ${name}`,
      steps: "Steps",
      notes: "Notes",
      placeHere: "Place on this head",
      placeOnNew: "Place on a new plan",
      saveAsOwn: "Save as your own",
      saveAsCopy: "Save as a copy",
      edit: "Rename, edit",
      editing: (name: string) => `Edit “${name}”`,
      delete: "Delete",
      stepsStay: "The steps stay as they are written.",
      vary: "Change before placing",
      way: "Way",
      stitch: "Stitch",
      span: ({ low, high, usual }: { low: string; high: string; usual: string }) =>
        `${low} to ${high}, usually ${usual}`,
      anotherHead: "See it on another head",
      head: "Head",
      hairline: "Hairline",
      thisPlans: "This plan’s",
      heads: { small: "Small, 52 cm", average: "Average", large: "Large, 62 cm" } satisfies Record<
        TriedHead,
        string
      >,
      hairlines: {
        round: "Round",
        straight: "Straight",
        receding: "Receding",
        peaked: "Peaked",
      } satisfies Record<(typeof hairlineForms)[number], string>,
    },

    own: {
      save: (selected: number) =>
        selected === 0
          ? "Save all sections as a technique…"
          : t.count(selected, {
              one: "Save the selected section as a technique…",
              other: "Save # selected sections as a technique…",
            }),
      titleOf: (count: number) => `A technique of ${sections(count)}`,
      name: "Name",
      nameHint: "A name of at least one letter",
      aim: "What it is for, in a sentence",
      steps: "Steps, one a line",
      notes: "Notes",
      private:
        "A technique can be passed on: write nothing of a client into it. Notes of single foils stay with the plan.",
      saveThis: "Save this technique",
      saved: (name: string) => `The technique “${name}” is saved`,
      savedAlready: (name: string) => `The technique “${name}” was saved already`,
      deleted: (name: string) => `The technique “${name}” was deleted`,
      deletedNote: (name: string) => `“${name}” was deleted.`,
      undo: "Undo",
      openFile: "Open a technique file…",
      file: "Technique file",
      unreadable: (count: number) =>
        t.count(count, {
          one: "# technique saved here cannot be read by this Partline, and stays as it is.",
          other: "# techniques saved here cannot be read by this Partline, and stay as they are.",
        }),
    },

    share: {
      copyLink: "Copy link",
      share: "Share…",
      toFile: "Save to a file",
      tooLong: "Too long for a link: save it to a file and send that.",
      copyFromHere: "Copy the link from here:",
      copied: "The link is copied. It holds the technique, nothing of a client.",
      link: "Link",
      byLink: "A technique by link",
      nameless: "A technique without a name",
      opened: "You opened a shared technique. Nothing is saved or changed until you choose.",
      onTop: ({ plan, count }: { plan: string; count: number }) =>
        `“${plan}” has ${sections(count)} already: placed on this head, the technique comes on top of them.`,
    },
  }
}

type ComesTo = {
  foils: number
  low: number
  high: number
  minLow: number
  minHigh: number
  withoutRoom: number
}

export type TechniquesWords = ReturnType<typeof techniques>
