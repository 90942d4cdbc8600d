import { brightFrame } from "./brightFrame"
import { coilFrame } from "./coilFrame"
import { crownHalo } from "./crownHalo"
import { fanFrame } from "./fanFrame"
import { fringePanel } from "./fringePanel"
import { fullHairline } from "./fullHairline"
import { greyBlend } from "./greyBlend"
import { napePeek } from "./napePeek"
import { offCentreFrame } from "./offCentreFrame"
import { partialWeave } from "./partialWeave"
import type { HouseTechniqueId, TechniquePreset } from "./technique"
import { templeToTemple } from "./templeToTemple"
import { unequalSides } from "./unequalSides"

/**
 * Ways of working round the hairline, composed by us. Common practice, no source: distances behind the hairline,
 * depths and counts are usual ones, to be changed on the head.
 */
export const houseTechniques = {
  "bright-frame": brightFrame,
  "temple-to-temple": templeToTemple,
  "full-hairline": fullHairline,
  "fringe-panel": fringePanel,
  "off-centre-frame": offCentreFrame,
  "unequal-sides": unequalSides,
  "fan-frame": fanFrame,
  "grey-blend": greyBlend,
  "coil-frame": coilFrame,
  "partial-weave": partialWeave,
  "crown-halo": crownHalo,
  "nape-peek": napePeek,
} satisfies { [Id in HouseTechniqueId]: TechniquePreset<unknown> }

export type HouseTechnique = (typeof houseTechniques)[HouseTechniqueId]

/** The figures that the steps of a technique are told. */
export type ToldOf<Id extends HouseTechniqueId> = ReturnType<(typeof houseTechniques)[Id]["shape"]>["told"]

export const techniques = Object.values(houseTechniques)
