import type { TechniqueParting } from "../geometry/technique"
import type { StitchWord } from "./foils"

/**
 * Ways of working round the hairline that the trade teaches, in our own words. Common practice, no source: distances
 * behind the hairline, depths and counts are usual ones, to be changed on the head.
 */
export type Technique = {
  id: string
  name: string
  aim: string
  /** Sections of the head's right, each laid again on the left unless it crosses the middle. */
  sections: readonly TechniqueSection[]
}
export type TechniqueSection = {
  kind: "slice" | "weave" | "backcomb" | "left-out"
  parting: TechniqueParting
  depthMm: number
  /** Lies across the middle, so has no twin. */
  isCentred?: true
  stitch?: StitchWord
  name?: string
}

const parallel = (from: number, to: number, behindMm: number): TechniqueParting => ({
  run: "parallel",
  from: { landmark: from, behindMm },
  to: { landmark: to, behindMm },
})
type End = readonly [landmark: number, behindMm: number]
const between =
  (run: "straight" | "drifting") =>
  (from: End, to: End): TechniqueParting => ({
    run,
    from: { landmark: from[0], behindMm: from[1] },
    to: { landmark: to[0], behindMm: to[1] },
  })
const straight = between("straight")
const drifting = between("drifting")

/** The same section at several distances behind the hairline. */
const rows = (distances: readonly number[], section: (behindMm: number) => TechniqueSection) =>
  distances.map(section)

export const techniques: readonly Technique[] = [
  {
    id: "frame-of-three",
    name: "Hairline frame of three",
    aim: "A bright edge that melts into the hair behind it.",
    sections: [
      { kind: "slice", parting: parallel(0.35, 2, 5), depthMm: 3 },
      { kind: "slice", parting: drifting([0.45, 14], [2.2, 24]), depthMm: 4 },
      { kind: "backcomb", parting: drifting([0.5, 33], [2.3, 42]), depthMm: 12, stitch: "medium" },
    ],
  },
  {
    id: "full-hairline",
    name: "Full hairline",
    aim: "Fine slices all the way round, for hair worn up.",
    sections: [
      { kind: "slice", parting: parallel(0.15, 1, 5), depthMm: 3 },
      { kind: "slice", parting: parallel(1.1, 2, 5), depthMm: 3 },
      { kind: "slice", parting: parallel(2.1, 2.7, 5), depthMm: 3 },
      { kind: "slice", parting: parallel(5.1, 5.9, 6), depthMm: 3 },
      { kind: "slice", parting: parallel(6.15, 6.9, 6), depthMm: 3 },
    ],
  },
  {
    id: "temple-to-temple",
    name: "Temple-to-temple micro-slices",
    aim: "Three whisper-thin slices a side that let light through.",
    sections: rows([5, 11, 17], (behindMm) => ({
      kind: "slice",
      parting: parallel(0.2, 1.9, behindMm),
      depthMm: 1.5,
    })),
  },
  {
    id: "fringe-panel",
    name: "Fringe panel",
    aim: "Lightness in a fringe, softest at its edge.",
    sections: [
      { kind: "left-out", parting: parallel(-0.7, 0.7, 4), depthMm: 3, isCentred: true, name: "Baby hairs" },
      { kind: "weave", parting: parallel(-0.8, 0.8, 11), depthMm: 6, isCentred: true, stitch: "fine" },
      { kind: "weave", parting: parallel(-0.7, 0.7, 21), depthMm: 6, isCentred: true, stitch: "fine" },
      { kind: "slice", parting: parallel(-0.6, 0.6, 29), depthMm: 4, isCentred: true },
    ],
  },
  {
    id: "four-section-frame",
    name: "Face frame with triangle",
    aim: "A triangle over the forehead, two slices down each side.",
    sections: [
      { kind: "slice", parting: parallel(-0.8, 0.8, 7), depthMm: 4, isCentred: true },
      {
        kind: "weave",
        parting: parallel(-0.6, 0.6, 19),
        depthMm: 6,
        isCentred: true,
        stitch: "medium",
      },
      { kind: "slice", parting: parallel(1.15, 2.4, 6), depthMm: 4 },
      { kind: "slice", parting: parallel(1.25, 2.3, 16), depthMm: 4 },
    ],
  },
  {
    id: "half-head-weave",
    name: "Half-head weave",
    aim: "Fine stitches through top and sides, left natural underneath.",
    sections: rows([8, 18, 28, 38, 48], (behindMm) => ({
      kind: "weave",
      parting: parallel(0.3, 2.3, behindMm),
      depthMm: 6,
      stitch: "fine",
    })),
  },
  {
    id: "crown-halo",
    name: "Crown halo",
    aim: "Light across the crown, under a natural veil.",
    sections: [
      {
        kind: "left-out",
        parting: straight([-2, 74], [2, 74]),
        depthMm: 8,
        isCentred: true,
        name: "Veil",
      },
      {
        kind: "weave",
        parting: straight([-2.35, 78], [2.35, 78]),
        depthMm: 6,
        isCentred: true,
        stitch: "fine",
      },
      {
        kind: "weave",
        parting: straight([-2.7, 82], [2.7, 82]),
        depthMm: 6,
        isCentred: true,
        stitch: "fine",
      },
    ],
  },
  {
    id: "nape-peek",
    name: "Nape peek",
    aim: "Slices at the nape that show when hair is lifted.",
    sections: rows([7, 17], (behindMm) => ({
      kind: "slice",
      parting: parallel(6.2, 6.85, behindMm),
      depthMm: 4,
    })),
  },
]
