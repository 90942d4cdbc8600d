import { crownHalo } from "./crownHalo"
import { fourSectionFrame } from "./fourSectionFrame"
import { frameOfThree } from "./frameOfThree"
import { fringePanel } from "./fringePanel"
import { fullHairline } from "./fullHairline"
import { halfHeadWeave } from "./halfHeadWeave"
import { napePeek } from "./napePeek"
import type { TechniquePreset } from "./technique"
import { templeToTemple } from "./templeToTemple"

/**
 * Ways of working round the hairline that the trade teaches, in our own words. Common practice, no source: distances
 * behind the hairline, depths and counts are usual ones, to be changed on the head.
 */
export const techniques: readonly TechniquePreset[] = [
  frameOfThree,
  fullHairline,
  templeToTemple,
  fringePanel,
  fourSectionFrame,
  halfHeadWeave,
  crownHalo,
  napePeek,
]
