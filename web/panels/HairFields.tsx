import { densityPerCm2, fibreUm } from "../../presets/hairTypes"
import { act } from "../plan/act"
import { setHair } from "../plan/edits/setHair"
import { limits } from "../plan/limits"
import { usePlan } from "../plan/usePlan"
import { LengthField } from "./LengthField"
import { WordOrNumber } from "./WordOrNumber"

/** How much hair there is, how thick one hair is, and how long it is where. */
export function HairFields() {
  const { densityPerCm2: density, fibreUm: fibre, lengthCm } = usePlan((plan) => plan.hair)
  const lengthen = (where: keyof typeof lengthCm, cm: number) =>
    act(`Change the length, ${where}`, setHair({ lengthCm: { ...lengthCm, [where]: cm } }))
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
        onCommit={(densityPerCm2) => act("Change the density", setHair({ densityPerCm2 }))}
      />
      <WordOrNumber
        name="Fibre"
        unit="µm"
        words={fibreUm}
        value={fibre}
        limit={limits.fibreUm}
        step={1}
        onCommit={(fibreUm) => act("Change the fibre", setHair({ fibreUm }))}
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
