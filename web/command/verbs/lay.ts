import { fitAxes } from "../../../geometry/scalp/fit"
import { type HairlineForm, hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { HeadSizeError } from "../../../geometry/scalp/headSize"
import { headFigures } from "../../../presets/client/headSizes"
import { isRefusal } from "../../core/document/edit"
import { newPlan } from "../../core/document/newPlan"
import type { Plan } from "../../core/document/schema"
import { layTechnique } from "../../core/edits/lay/layTechnique"
import { savePlan } from "../../core/file/planFile"
import { laidFrom, type TechniqueChoice } from "../../core/technique/techniqueChoices"
import { nowHere } from "../../session/nowHere"
import { caliperOptions, headSizeOf, tapeOptions } from "../input/headSize"
import { techniqueMeant } from "../input/openTechnique"
import { done, type Outcome, type Request, refuse, refuseTyped, type Verb } from "../input/verb"

export const lay: Verb = {
  usage:
    "TECHNIQUE --out FILE.json [--length MM --breadth MM --height MM | --around MM --over MM --front-to-nape MM] [--hairline FORM]",
  takesFile: true,
  options: [...caliperOptions, ...tapeOptions, "hairline", "out"],
  run(request) {
    const { out } = request.options
    if (out === undefined) return refuseTyped(request, [{ code: "plan-out-missing" }])
    const found = techniqueMeant(request.file, request)
    if (!found.ok) return refuse(...found.problems)
    const asked = headAsked(request)
    if ("refused" in asked) return asked.refused
    const laid = laidOn(found.choice, asked.head)
    if (laid === null) {
      const { name } = found.choice.technique
      return refuseTyped(request, [{ code: "no-room", name, learner: null }])
    }
    try {
      request.desk.writeBytes(out, new TextEncoder().encode(savePlan(laid)))
    } catch {
      return refuseTyped(request, [{ code: "cannot-write", path: out }])
    }
    return done({ out, technique: found.choice.technique.id, sections: laid.sections.length })
  },
}

/** A technique on a head, the usual one where none is told, as a plan of its own; null where the head has no room for it. */
export function laidOn(choice: TechniqueChoice, head: Plan["head"] | null): Plan | null {
  const fresh = newPlan(new Date(nowHere().moment))
  const empty: Plan = { ...fresh, name: choice.technique.name, head: head ?? fresh.head }
  const laid = layTechnique(choice.technique, laidFrom(choice))(empty)
  return isRefusal(laid) ? null : laid
}

/** The head that the options tell; null where they tell none. */
function headAsked(request: Request): { head: Plan["head"] | null } | { refused: Outcome } {
  const { options, words } = request
  const typed = options.hairline ?? "round"
  const form: HairlineForm | undefined = hairlineForms.find((each) => each === typed)
  if (!form) {
    const wrong = { code: "not-a-choice", option: "hairline", known: hairlineForms, found: typed } as const
    return { refused: refuseTyped(request, [wrong]) }
  }
  const isSized = [...caliperOptions, ...tapeOptions].some((option) => options[option] !== undefined)
  if (!isSized) {
    const { head } = newPlan(new Date(nowHere().moment))
    return { head: { ...head, hairline: { form } } }
  }
  const taken = headSizeOf(options)
  if (!taken.ok) return { refused: refuseTyped(request, taken.problems) }
  try {
    fitAxes(taken.size, headFigures)
  } catch (fault) {
    if (fault instanceof HeadSizeError) return { refused: refuse(words.problems.headSize(fault.fault)) }
    throw fault
  }
  return { head: { size: taken.size, hairline: { form } } }
}
