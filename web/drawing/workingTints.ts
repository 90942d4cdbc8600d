import type { ViewPoint } from "../../geometry/surface/frames"
import { seenArea } from "../../geometry/surface/seenArea"
import type { DividedArea } from "../../geometry/working/workingSections"
import type { Plan } from "../core/document/schema"
import { workingSectionsOf } from "../core/figures/workingSections"
import { tintOf } from "./inks"
import type { Mark } from "./mark"
import type { Scene } from "./marks"

const knownSeen = new WeakMap<Scene, WeakMap<DividedArea, readonly ViewPoint[][]>>()

/** The wash of each working section on one page, to lie under everything else. */
export const workingTintMarks = (plan: Plan, scene: Scene): Mark[] =>
  workingSectionsOf(plan).flatMap(({ area, place }) =>
    seenIn(scene, area).map((path): Mark => ({ kind: "area", path, ink: tintOf(place) })),
  )

function seenIn(scene: Scene, area: DividedArea): readonly ViewPoint[][] {
  const ofScene = knownSeen.get(scene) ?? new WeakMap<DividedArea, readonly ViewPoint[][]>()
  knownSeen.set(scene, ofScene)
  const known = ofScene.get(area) ?? seenArea(area.ring, scene.view, scene.head.surface)
  ofScene.set(area, known)
  return known
}
