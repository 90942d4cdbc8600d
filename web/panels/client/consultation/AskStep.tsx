import { lookAtScalp } from "../../../core/edits/plan/answerQuestions"
import { letters, limits } from "../../../core/fields/limits"
import { commit } from "../../../session/commit"
import { nowHere } from "../../../session/nowHere"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { labelledOptions } from "../../fields/options"
import { TextField } from "../../fields/TextField"
import { PatchTests } from "./PatchTests"
import type { AskProps, PartProps } from "./partProps"
import { Questions } from "./Questions"
import { StopsHere } from "./StopsHere"

const usualAge = 30

/** What can end the visit, so it comes first: age, scalp, health and the patch tests. */
export function AskStep({ known, write, days, told }: AskProps & PartProps) {
  return (
    <>
      <WhoAndAge known={known} write={write} days={days} told={told} />
      <Questions known={known} days={days} told={told} />
      <div id="field-patch-tests">
        <PatchTests known={known} write={write} days={days} told={told} />
      </div>
    </>
  )
}

function WhoAndAge({ known, write, days, told }: AskProps & PartProps) {
  const { ask: said } = useWords().client
  const { ageYears, scalp, askedBy } = known
  const isOld = scalp !== null && scalp.on !== days.today
  const look = (seen: NonNullable<typeof scalp>["seen"]) =>
    commit({ chapter: "client", code: "set-scalp" }, lookAtScalp(seen, nowHere()))
  return (
    <>
      <div className="pairs">
        <TextField
          name={said.askedBy}
          value={askedBy}
          most={letters.name}
          onCommit={(name) => write("set-asked-by", { askedBy: name })}
        />
        <div id="field-age">
          <NumberField
            name={ageYears === null ? said.ageNotKnown : said.age}
            unit={said.years}
            value={ageYears ?? usualAge}
            range={limits.ageYears}
            isUnset={ageYears === null}
            onClear={() => write("clear-age", { ageYears: null })}
            onCommit={(years) => write("set-age", { ageYears: years })}
          />
        </div>
      </div>
      <StopsHere told={told} fields={["age"]} />
      <div id="field-scalp" className={isOld ? "inherited" : undefined}>
        <Choices
          legend={said.scalp}
          options={labelledOptions(said.scalps)}
          value={scalp?.seen ?? null}
          onChange={look}
          onAgain={(seen) => isOld && look(seen)}
          onClear={() => write("clear-scalp", { scalp: null })}
        />
        {isOld && <p className="aside">{said.inherited(scalp.on)}</p>}
        <StopsHere told={told} fields={["scalp"]} />
      </div>
    </>
  )
}
