import { describe, expect, it } from "vitest"
import type { PlacementWords } from "../../../web/words/en/placement/placement"
import { type CodeOf, type Sentences, say } from "../../../web/words/say"
import { en, everyLanguage } from "../../support/words"

type Code = CodeOf<PlacementWords["done"]>

const foil = { code: "foil", number: 3 } as const
const frontLeft = { code: "by-place", kind: "front", side: "left", nth: 1 } as const
const veil = { code: "left-out", name: "Veil" } as const

/** A change of each kind, with lopsided numbers. */
const changes: { [C in Code["code"]]: Omit<Extract<Code, { code: C }>, "code"> } = {
  "draw-section": { kind: "slice" },
  "add-along-hairline": { kind: "weave", side: "left", from: "recession", to: "temple" },
  "change-kind": { kind: "backcomb" },
  rename: { section: foil },
  split: { section: foil },
  reduce: { section: veil },
  "set-depth": {},
  "take-hair": { taken: "behind" },
  "set-stitch": {},
  "set-gap": {},
  "set-dip": {},
  "set-base": { base: "weave" },
  "set-pushed-share": {},
  "set-cushion": {},
  "set-edge": {},
  "draw-edge": {},
  "set-edge-high": {},
  "set-edge-drop": {},
  "set-feather": {},
  "set-saturation": {},
  "set-note": {},
  "set-map-number": {},
  "set-start": {},
  "set-coated": {},
  "set-faces": {},
  "set-carrier": {},
  "set-elevation": {},
  "set-over-direction": {},
  "set-foil-lie": {},
  "set-roots-mix": {},
  "set-roots-end": {},
  "set-roots-order": {},
  "set-roots-after": {},
  "use-mix": { mix: "B" },
  "set-behind": {},
  "set-along": {},
  "set-length": {},
  "set-angle": {},
  "set-direction": { direction: "diagonal back" },
  "repeat-behind": {},
  "repeat-behind-both": {},
  thinner: {},
  thicker: {},
  mirror: {},
  "break-pair": {},
  "towards-hairline": {},
  "away-from-hairline": {},
  "leave-between": {},
  "leave-veil": {},
  "leave-baby-hairs": {},
  delete: { count: 2 },
  paste: { count: 5 },
  move: {},
  bend: {},
  nudge: { mm: 5, way: "towards" },
  "number-in-order": {},
  "apply-at": { section: foil, count: 1, place: 2, foils: 7 },
  "apply-left-out": { section: veil, count: 2, before: 3, foils: 7 },
  "place-technique": { name: "Soft corner" },
  "move-landmark": { name: "temple", sides: "both" },
  "reset-landmark": { name: "ear top", sides: "left" },
  "reset-hairline": {},
  "set-usual-parting": {},
  "clear-usual-parting": {},
  "set-whorl": { turns: "anticlockwise" },
  "clear-whorl": {},
  "move-whorl": {},
  divide: { start: "horseshoe" },
  "draw-section-line": {},
  "move-section-line": {},
  "bend-section-line": {},
  "nudge-section-line": { way: "nape" },
  "mirror-section-line": {},
  "remove-section-line": { more: 2 },
  "remove-section-lines": {},
  "number-by-section": {},
  "apply-by-section": {},
  "rename-section": { name: frontLeft, to: "Parting side" },
  "work-earlier": { name: frontLeft },
  "work-later": { name: { code: "own-name", name: "Parting side", nth: 2 } },
  "trim-to-section": { sections: [foil] },
  "split-at-line": { sections: [foil, veil] },
  "let-cross": { sections: [foil, veil] },
  "stack-behind": { section: foil },
  stack: { section: foil, each: 3, sides: 2, foils: 4, sections: 6 },
}

const told = ({ done }: PlacementWords) =>
  Object.entries(changes).map(([code, data]) =>
    say(done as unknown as Sentences<{ code: string }>, { code, ...data }),
  )

describe.each(everyLanguage)("the changes of the placement chapter in %s", (_, { placement }) => {
  it("are each called something of their own", () => {
    const all = told(placement)
    expect(all.filter((each) => each === "" || /undefined|NaN|\[object/.test(each))).toEqual([])
    expect(all.length).toBe(Object.keys(placement.done).length)
  })
})

describe("the placement chapter in English", () => {
  const { list, working, hairline, stack, map, editor } = en.placement

  it("counts places as a person says them", () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 23, 112].map(list.ordinal)).toEqual(
      "1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 23rd 112th".split(" "),
    )
  })

  it("tells how much of a foil lies in another section of the head", () => {
    const into = { ...frontLeft, side: "right" } as const
    expect(working.crossing({ section: foil, home: frontLeft, into, areaCm2: 2.44 })).toBe(
      "Foil 3, of front left: 2.4 cm² of its scalp lies in front right.",
    )
  })

  it("tells how far a landmark is from where the form has it", () => {
    expect(hairline.moved({ behindMm: 3.5, towardNapeMm: -2 })).toBe(
      "3.5 mm into the hair, 2 mm towards the forehead",
    )
    expect(hairline.moved(undefined)).toBe("as the form")
  })

  it("counts the sections of a stack and the foils among them", () => {
    expect(stack.total({ foils: 4, sections: 4 })).toBe("4 foils")
    expect(stack.total({ foils: 4, sections: 6 })).toBe("6 sections, 4 of them foils")
    expect(stack.total({ foils: 0, sections: 1 })).toBe("1 section")
  })

  it("tells what a stroke was drawn to", () => {
    expect(map.snapped({ to: "last parting", gapMm: 3 })).toBe(
      "Snapped: parallel to the last parting, gap 3 mm",
    )
    expect(map.snapped({ to: "diagonal back", gapMm: 3 })).toBe("Snapped: diagonal back")
  })

  it("tells the pair of a section and its side", () => {
    expect(editor.pair({ other: foil, side: "left" })).toBe(
      "Pair with foil 3 on the client’s left: changes apply to both.",
    )
  })

  it("tells the hair that two take", () => {
    const both = { earlier: veil, later: foil, areaCm2: 1.26 } as const
    expect(list.overlaps.told(both)).toBe("Foil 3 takes 1.3 cm² of the hair kept out in Veil.")
  })
})
