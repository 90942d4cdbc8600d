import type { Plan } from "../../core/document/schema"
import { measured } from "../../core/figures/measured"
import { foilsDone } from "../../core/record/doneToday"
import { pictureOf } from "../../drawing/headDrawing"
import { viewDrawing } from "../views/viewBlock"
import { frameOf } from "../views/viewFrame"

export const figureMm = 46
const scale = 0.175

/** The front as the client sees it in the mirror, with what was done alone. */
export function takeHomePicture(whole: Plan) {
  const plan: Plan = { ...whole, sections: foilsDone(whole) }
  const { head, overlaps } = measured(plan)
  const picture = pictureOf(head, "front")
  const frame = frameOf("front", picture, { scale, names: 0 })
  return viewDrawing({ plan, overlaps, picture, frame, scale, flipped: true, widthMm: figureMm })
}
