import { pointsEach } from "../../../geometry/strands/grow"
import { hashRandom } from "../../../geometry/strands/hashRandom"
import { smoothStep } from "../../../geometry/surface/smoothStep"
import { strandsDifferByLevels } from "../../../presets/pigment/pigmentByLevel"
import { zoneNames } from "../document/consultation"
import { colourOf, type HairShade } from "../pigment/hairColour"
import { screenBytes } from "../pigment/screenColour"
import type { Shades } from "../pigment/shadesOfPlan"
import type { Fall } from "./fall"

/** How a stretch of light begins and ends on a strand: over so many mm, as product blurs it. */
const softMm = 7
const rootsEndMm = 30
const endsAreLastShare = 0.25

/** What a picture of a fall shows: its shades, and by how many mm the hair has grown since. */
export type Shown = { shades: Shades; grownMm: number }

/** The colour of each point of each strand, sRGB, and how open it lies: four bytes a point. */
export function strandColours(
  fall: Pick<Fall, "strands" | "light" | "open" | "zones">,
  shown: Shown,
): Uint8Array {
  const { count, lengthsMm } = fall.strands
  const bytes = new Uint8Array(4 * count * pointsEach)
  const { finish, aimed, whiteShare } = shown.shades
  const lifted = table((level) => ({ kind: "lifted", level, toned: finish }))
  const grown = Array.from({ length: hairsDrawnBy + 1 }, (_, white) =>
    table((level) => ({ kind: "natural", level, whiteShare: white / hairsDrawnBy })),
  )
  for (let strand = 0; strand < count; strand++) {
    const stepMm = lengthsMm[strand] / (pointsEach - 1)
    const strays = (2 * hashRandom(strand, 11) - 1) * strandsDifferByLevels
    const ofStrand = grown[whiteHairs(strand, whiteShare)]
    const now = shown.shades.now[zoneNames[fall.zones[strand]]]
    const isLight = fall.light.by[strand] >= 0
    const [fromMm, toMm] = [fall.light.fromMm[strand], fall.light.toMm[strand]]
    for (let k = 0; k < pointsEach; k++) {
      const runMm = Math.max(0, k * stepMm - shown.grownMm)
      const level = levelAlong(now, runMm, lengthsMm[strand]) + strays
      const natural = ofStrand(level)
      const share =
        isLight && k * stepMm >= shown.grownMm
          ? smoothStep(fromMm - softMm, fromMm + softMm, runMm) *
            smoothStep(toMm + softMm, toMm - softMm, runMm)
          : 0
      const light = share > 0 ? lifted(Math.max(aimed, level) + strays) : natural
      const i = 4 * (strand * pointsEach + k)
      for (let channel = 0; channel < 3; channel++)
        bytes[i + channel] = natural[channel] + (light[channel] - natural[channel]) * share
      bytes[i + 3] = fall.open[strand * pointsEach + k]
    }
  }
  return bytes
}

/** A strand stands for some hairs, of which each is white or not by its own lot. Assumption: as many as are seen apart. */
const hairsDrawnBy = 5

function whiteHairs(strand: number, share: number) {
  let white = 0
  for (let hair = 0; hair < hairsDrawnBy; hair++) if (hashRandom(strand, 30 + hair) < share) white += 1
  return white
}

function levelAlong({ roots, midLengths, ends }: Shades["now"]["top"], runMm: number, lengthMm: number) {
  const fromRoots = roots + (midLengths - roots) * smoothStep(rootsEndMm - 10, rootsEndMm + 10, runMm)
  const toEnds = smoothStep(1 - 1.5 * endsAreLastShare, 1 - 0.5 * endsAreLastShare, runMm / lengthMm)
  return fromRoots + (ends - midLengths) * toEnds
}

const perLevel = 20

/** Shades at every twentieth of a level, made when first asked for. */
function table(shade: (level: number) => HairShade) {
  const known: number[][] = []
  return (level: number): readonly number[] => {
    const place = Math.round(Math.min(10, Math.max(1, level)) * perLevel)
    known[place] ??= screenBytes(colourOf(shade(place / perLevel)))
    return known[place]
  }
}
