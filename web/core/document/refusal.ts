import type { DirectionName } from "../../../geometry/parting/direction"
import type { PartingRefusal } from "../../../geometry/parting/parting"
import type { HeadSide } from "../../../geometry/scalp/hairline"
import type { HairlineFault } from "../../../geometry/scalp/hairlineFault"
import type { WorkingStartId } from "../../../presets/placement/workingSections"
import type { Problem } from "../fields/problem"
import type { Piece } from "../kinds/kindRecord"
import type { SectionNameCode } from "./sectionNameCode"

/** Why a change cannot be. */
export type Refusal = { readonly refused: RefusalCode }

export type RefusalCode =
  | { [C in PartingRefusal]: { code: C } }[PartingRefusal]
  | FaultRefusal
  | ReshapeRefusal
  | SectionRefusal
  | LayRefusal
  | { code: "no-new-growth"; foil: number; piece?: Piece }
  | { code: "mix-in-use"; mix: string; foils: readonly number[]; piece?: Piece }
  | { code: "foil-without-mix"; foil: number; piece?: Piece }

/** What the change would leave is not in order. */
type FaultRefusal =
  | { code: "problem"; problem: Problem }
  | { code: "section-problem"; section: SectionNameCode; problem: Problem }
  | { code: "divider-problem"; divider: number; problem: Problem }
  | { code: "too-many-sections"; most: number }
  | { code: "hairline"; fault: HairlineFault }
  /** The other one of a pair is alone to blame. */
  | { code: "break-the-pair"; section: SectionNameCode; because: RefusalCode }

/** A parting cannot be made so by typed values. */
type ReshapeRefusal =
  | { code: "no-place-behind"; behindMm: number }
  | { code: "never-so-long"; wantedMm: number }
  | { code: "only-so-long"; madeMm: number; wantedMm: number }
  | { code: "off-hairline" }
  | { code: "no-direction"; direction: DirectionName }
  | { code: "no-angle"; degrees: number }
  | { code: "angle-leaves-hair"; degrees: number }
  | { code: "no-start-along"; side: HeadSide; wantedMm: number }
  | { code: "divider-runs-along"; section: SectionNameCode }

type SectionRefusal =
  | { code: "thinning-does-not-part" }
  | { code: "one-foil-does" }
  | { code: "nowhere-to-paste" }
  | { code: "paired-already"; section: SectionNameCode }

/** There is no room for what was to be laid. */
type LayRefusal =
  | { code: "no-room-behind" }
  | { code: "no-room-on-other-side" }
  | { code: "no-room-for-stack"; section: SectionNameCode }
  | { code: "stack-ends"; section: SectionNameCode; fits: number; asked: number }
  | { code: "no-hair-for-veil"; section: SectionNameCode }
  | { code: "up-to-hairline"; sections: readonly SectionNameCode[] }
  | { code: "choose-two" }
  | { code: "nothing-between"; sections: readonly SectionNameCode[] }
  | { code: "wide-between"; mostMm: number; sections: readonly SectionNameCode[] }
  | { code: "no-room-for"; name: string }
  | { code: "no-room-for-technique"; name: string }
  | { code: "no-room-for-start"; start: WorkingStartId }
  | { code: "start-is-there"; start: WorkingStartId }
