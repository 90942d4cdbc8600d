import type { ViewPoint } from "../../geometry/frames"
import { seenArea } from "../../geometry/seenArea"
import type { DividedArea } from "../../geometry/workingSections"
import type { Mark } from "./mark"
import type { Scene } from "./marks"
import type { Plan } from "./schema"
import { workingSectionsOf } from "./workingSections"

const knownSeen = new WeakMap<Scene, WeakMap<DividedArea, readonly ViewPoint[][]>>()

/** The wash of each working section on one page, to lie under everything else. */
export const workingTintMarks = (plan: Plan, scene: Scene): Mark[] =>
  workingSectionsOf(plan).flatMap(({ area, tint }) =>
    seenIn(scene, area).map((path): Mark => ({ kind: "area", path, ink: tint })),
  )

function seenIn(scene: Scene, area: DividedArea): readonly ViewPoint[][] {
  const ofScene = knownSeen.get(scene) ?? new WeakMap<DividedArea, readonly ViewPoint[][]>()
  knownSeen.set(scene, ofScene)
  const known = ofScene.get(area) ?? seenArea(area.ring, scene.view, scene.head.surface)
  ofScene.set(area, known)
  return known
}
