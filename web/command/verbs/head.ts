import { fitAxes, tapeContradiction } from "../../../geometry/scalp/fit"
import { type HairlineForm, hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { headMeasures } from "../../../geometry/scalp/headMeasures"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import { HeadSizeError } from "../../../geometry/scalp/headSize"
import { type Landmark, landmarkOn } from "../../../geometry/scalp/landmarks"
import { zoneAreas, zones } from "../../../geometry/scalp/zones"
import { headFigures } from "../../../presets/client/headSizes"
import type { Words } from "../../words/en/words"
import { caliperOptions, headSizeOf, tapeOptions } from "../input/headSize"
import { done, type Outcome, refuse, refuseTyped, type Verb } from "../input/verb"

export const head: Verb = {
  usage:
    "(--length MM --breadth MM --height MM | --around MM --over MM --front-to-nape MM) [--hairline FORM]",
  takesFile: false,
  options: [...caliperOptions, ...tapeOptions, "hairline"],
  run(request) {
    const { hairline = "round" } = request.options
    const form = hairlineForms.find((each) => each === hairline)
    if (!form)
      return refuseTyped(request, [
        { code: "not-a-choice", option: "hairline", known: hairlineForms, found: hairline },
      ])
    const taken = headSizeOf(request.options)
    return taken.ok ? describe(taken.size, form, request.words) : refuseTyped(request, taken.problems)
  },
}

function describe(size: HeadSize, form: HairlineForm, words: Words): Outcome {
  try {
    const found = tapeContradiction(size, headFigures)
    const said = words.client.head
    return {
      ...done(headObject(makeHeadFromAxes(fitAxes(size, headFigures), form))),
      ...(found && {
        problems: [said.contradicts({ name: said.measures[found.which].name, byMm: found.byMm })],
      }),
    }
  } catch (fault) {
    if (fault instanceof HeadSizeError) return refuse(words.problems.headSize(fault.fault))
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
