import { densityPerCm2, fibreUm } from "../../../../presets/client/hairTypes"
import { setHair } from "../../../core/edits/plan/setHair"
import { limits } from "../../../core/fields/limits"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { LengthField } from "./LengthField"
import { WordOrNumber } from "./WordOrNumber"

/** How much hair there is, how thick one hair is, and how long it is where. */
export function HairFields() {
  const { measures: said } = useWords().client
  const { densityPerCm2: density, fibreUm: fibre, lengthCm } = usePlan((plan) => plan.hair)
  const lengthen = (where: keyof typeof lengthCm, cm: number) =>
    commit(
      { chapter: "client", code: "set-length", where },
      setHair({ lengthCm: { ...lengthCm, [where]: cm } }),
    )
  return (
    <section aria-labelledby="hair-title">
      <h2 id="hair-title">{said.title}</h2>
      <WordOrNumber
        name={said.density}
        unit={said.densityUnit}
        figures={densityPerCm2}
        words={said.densities}
        value={density}
        limit={limits.densityPerCm2}
        step={5}
        onCommit={(densityPerCm2) =>
          commit({ chapter: "client", code: "set-density" }, setHair({ densityPerCm2 }))
        }
      />
      <WordOrNumber
        name={said.texture}
        unit={said.textureUnit}
        figures={fibreUm}
        words={said.textures}
        value={fibre}
        limit={limits.fibreUm}
        step={1}
        onCommit={(fibreUm) => commit({ chapter: "client", code: "set-texture" }, setHair({ fibreUm }))}
      />
      <fieldset className="lengths">
        <legend>{said.length}</legend>
        {(["front", "sides", "back"] as const).map((where) => (
          <LengthField
            key={where}
            name={said.lengthPlaces[where]}
            exactly={said.lengthOf[where]}
            cm={lengthCm[where]}
            onCommit={(cm) => lengthen(where, cm)}
          />
        ))}
      </fieldset>
    </section>
  )
}
