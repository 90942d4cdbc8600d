import type { Plan } from "../../core/document/schema"
import type { Mark } from "../../drawing/mark"
import type { Scene } from "../../drawing/marks"
import { crossingMarks, dividerMarks, workingNumberMarks } from "../../drawing/workingSectionsMarks"
import { workingTintMarks } from "../../drawing/workingTints"
import type { Item } from "../pens/page"
import { capMm, letters, type } from "../setting/typesetting"
import { markItems, type ToPaper } from "./viewItems"

/** Height of the ring round the number of a working section, mm of paper. */
const ringMm = 5.4

/** The working sections on one view: their washes under everything, their dividing partings under the foils, crosses and numbers over them. */
export function workingItems(
  plan: Plan,
  scene: Scene,
  { scale, toPaper }: { scale: number; toPaper: ToPaper },
): { washes: Item[]; under: Item[]; over: Item[] } {
  const numbers = workingNumberMarks(plan, scene, ringMm / scale)
  const rings = markItems(numbers, toPaper)
  return {
    washes: markItems(workingTintMarks(plan, scene), toPaper).tones,
    under: markItems(dividerMarks(plan, scene), toPaper).lines,
    over: [
      ...markItems(crossingMarks(plan, scene), toPaper).lines,
      ...rings.tones,
      ...rings.lines,
      ...numbers.flatMap((mark) => numeral(mark, toPaper)),
    ],
  }
}

function numeral(mark: Mark, toPaper: ToPaper): Item[] {
  if (mark.kind !== "label") return []
  const [x, y] = toPaper(mark.at)
  return [letters(mark.text, [x, y + capMm(type.smallStrong) / 2], type.smallStrong, "center")]
}
