import { whorlPath, wornPath } from "../../geometry/parting/wornParting"
import type { Head } from "../../geometry/scalp/head"
import type { SurfacePath } from "../../geometry/surface/surfacePath"
import type { Plan } from "../core/document/schema"
import type { Mark } from "./mark"
import { lineMarks, type Scene } from "./marks"

/** The parting a client wears and the crown whorl, lightly, where a page shows them. */
export function wornMarks({ head: { wornParting, whorl } }: Pick<Plan, "head">, scene: Scene): Mark[] {
  return [
    ...(wornParting ? lineMarks(rememberedPath(scene.head, wornParting), "worn", scene) : []),
    ...(whorl ? lineMarks(whorlPath(whorl), "whorl", scene) : []),
  ]
}

type Worn = NonNullable<Plan["head"]["wornParting"]>
const remembered = new WeakMap<Head, WeakMap<Worn, SurfacePath>>()

function rememberedPath(head: Head, worn: Worn): SurfacePath {
  const ofHead = remembered.get(head) ?? new WeakMap<Worn, SurfacePath>()
  remembered.set(head, ofHead)
  const path = ofHead.get(worn) ?? wornPath(head, worn)
  ofHead.set(worn, path)
  return path
}
