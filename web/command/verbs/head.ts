import { fitAxes } from "../../../geometry/scalp/fit"
import { type HairlineForm, hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { headMeasures } from "../../../geometry/scalp/headMeasures"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import { type Landmark, landmarkOn } from "../../../geometry/scalp/landmarks"
import { zoneAreas, zones } from "../../../geometry/scalp/zones"
import { headFigures } from "../../../presets/client/headSizes"
import { caliperOptions, headSizeOf, tapeOptions } from "../input/headSize"
import { done, type Outcome, refuse, type Verb } from "../input/verb"

export const head: Verb = {
  usage:
    "(--length MM --breadth MM --height MM | --around MM --over MM --front-to-nape MM) [--hairline FORM]",
  summary:
    "The measures on the skin, the area of the hair and its zones, and the landmarks of a head of this size.",
  takesFile: false,
  options: { ...caliperOptions, ...tapeOptions, hairline: `${hairlineForms.join(", ")}; round if not given` },
  run({ options }) {
    const form = hairlineForms.find((each) => each === (options.hairline ?? "round"))
    if (!form) return refuse(`--hairline: expected ${hairlineForms.join(", ")}, found "${options.hairline}".`)
    const taken = headSizeOf(options)
    return taken.ok ? describe(taken.size, form) : refuse(...taken.problems)
  },
}

function describe(size: HeadSize, form: HairlineForm): Outcome {
  try {
    return done(headObject(makeHeadFromAxes(fitAxes(size, headFigures), form)))
  } catch (fault) {
    if (fault instanceof RangeError) return refuse(fault.message)
    throw fault
  }
}

/** Landmarks in mm of the head frame; those beside the middle are on the head's right. */
const landmarks = [
  "glabella",
  "crinion",
  "vertex",
  "opisthocranion",
  "inion",
  "nape",
  "euryon",
  "tragion",
  "earTop",
] as const satisfies readonly Landmark[]

function headObject(fitted: Head) {
  const { sagittalArcMm, frontToNapeMm, ...measures } = headMeasures(fitted.surface)
  const areas = zoneAreas(fitted)
  const hairAreaCm2 = zones.reduce((sum, zone) => sum + areas[zone], 0)
  return {
    ...measures,
    frontToNapeMm,
    glabellaToInionMm: sagittalArcMm,
    hairAreaCm2,
    shares: Object.fromEntries(zones.map((zone) => [zone, areas[zone] / hairAreaCm2])),
    landmarks: Object.fromEntries(landmarks.map((name) => [name, landmarkOn(fitted.surface, name)])),
  }
}
