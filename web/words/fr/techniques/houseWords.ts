import type { HouseTechniqueId } from "../../../../presets/techniques/technique"
import type { ToldOf } from "../../../../presets/techniques/techniques"

/** What is said of each technique of the house; its steps are told its figures. */
export type HouseWords = {
  readonly [Id in HouseTechniqueId]: {
    readonly name: string
    readonly aim: string
    readonly notes: string
    readonly steps: (told: ToldOf<Id>) => readonly string[]
  }
}
