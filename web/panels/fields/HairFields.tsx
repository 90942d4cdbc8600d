import { densityPerCm2, fibreUm } from "../../../presets/client/hairTypes"
import { limits } from "../../core/document/limits"
import { setHair } from "../../core/edits/plan/setHair"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { LengthField } from "./LengthField"
import { WordOrNumber } from "./WordOrNumber"

/** How much hair there is, how thick one hair is, and how long it is where. */
export function HairFields() {
  const { densityPerCm2: density, fibreUm: fibre, lengthCm } = usePlan((plan) => plan.hair)
  const lengthen = (where: keyof typeof lengthCm, cm: number) =>
    commit(`Change the length, ${where}`, setHair({ lengthCm: { ...lengthCm, [where]: cm } }))
  return (
    <section aria-labelledby="hair-title">
      <h2 id="hair-title">Hair</h2>
      <WordOrNumber
        name="Density"
        unit="per cm²"
        words={densityPerCm2}
        value={density}
        limit={limits.densityPerCm2}
        step={5}
        onCommit={(densityPerCm2) => commit("Change the density", setHair({ densityPerCm2 }))}
      />
      <WordOrNumber
        name="Fibre"
        unit="µm"
        words={fibreUm}
        value={fibre}
        limit={limits.fibreUm}
        step={1}
        onCommit={(fibreUm) => commit("Change the fibre", setHair({ fibreUm }))}
      />
      <fieldset className="lengths">
        <legend>Length, by where it falls combed straight</legend>
        <LengthField name="Front" cm={lengthCm.front} onCommit={(cm) => lengthen("front", cm)} />
        <LengthField name="Sides" cm={lengthCm.sides} onCommit={(cm) => lengthen("sides", cm)} />
        <LengthField name="Back" cm={lengthCm.back} onCommit={(cm) => lengthen("back", cm)} />
      </fieldset>
    </section>
  )
}
