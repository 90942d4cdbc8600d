import { useMemo } from "react"
import { headOf } from "../../../core/figures/measured"
import { wholeHead } from "../../../core/figures/wholeHead"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

/** What the head and the hair come to. */
export function WholeHeadFigures() {
  const { client, common } = useWords()
  const said = client.head
  const head = usePlan(headOf)
  const hair = usePlan((plan) => plan.hair)
  const { areaCm2, hairs } = useMemo(() => wholeHead(head, hair), [head, hair])
  return (
    <section className="whole-head" aria-labelledby="whole-title">
      <h2 id="whole-title">{said.whole}</h2>
      <dl className="large-figures">
        <div>
          <dt>{said.area}</dt>
          <dd>{common.figures.area(areaCm2)}</dd>
        </div>
        <div>
          <dt>{said.hairs}</dt>
          <dd>{common.figures.hairsRange(hairs)}</dd>
        </div>
      </dl>
    </section>
  )
}
