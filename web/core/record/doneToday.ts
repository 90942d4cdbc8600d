import { type Foil, type FoilKind, isFoil } from "../../../geometry/section/section"
import { tonersOfPlan } from "../bowls/toners"
import { foilRecords } from "../chair/chairRecord"
import { chairOfRecord } from "../chair/liveService"
import type { Plan } from "../document/schema"
import { foilKinds } from "../document/serviceRecord"
import { mixesUsed } from "../schedule/mixesUsed"
import { placesOf } from "../schedule/placesOf"
import type { Zone } from "../schedule/scheduleInput"
import { countText } from "../text/figureText"
import { joinWords } from "../text/joinWords"
import { dayIn } from "../text/zonedTime"

/** What was done to the hair, in words a client knows. */
export type DoneToday = { day: string; sentences: readonly string[]; isToned: boolean }

/** As it went at the chair where that was written down, on the day the clock of `zone` showed; else as it was planned. */
export function doneToday(plan: Plan, zone: string): DoneToday {
  const foils = foilsDone(plan)
  const toners = [
    ...new Set(tonersOfPlan(plan).flatMap(({ bowl, choice }) => (bowl && choice ? choice.product : []))),
  ]
  const mixes = mixesUsed(plan.mixes, foils)
  const products = [...new Set(mixes.map(({ product }) => product.trim()).filter(Boolean))]
  return {
    day: plan.service ? dayIn(zone, Date.parse(plan.service.startedAt)) : plan.date,
    isToned: toners.length > 0,
    sentences: [
      ...(foils.length > 0
        ? [`${countText(foils.length, "foil")} ${placesOf(foils, plan, zoneWords)}: ${kindsOf(foils)}.`]
        : []),
      ...(products.length > 0 ? [`Lightened with ${joinWords(products)}.`] : []),
      ...(toners.length > 0 ? [`Toned with ${joinWords(toners)}.`] : []),
    ],
  }
}

/** The foils that went on, where that was written down; else all that are planned. */
export function foilsDone({ sections, service }: Plan): Foil[] {
  const foils = sections.filter(isFoil)
  if (!service) return foils
  const records = foilRecords(chairOfRecord(service))
  return foils.filter(({ id }) => (records.get(id)?.onAtMs ?? null) !== null)
}

const zoneWords: Record<Zone, string> = {
  hairline: "along your hairline",
  top: "on top",
  left: "at the sides",
  right: "at the sides",
  back: "at the back",
}

const pieces: Record<FoilKind, string> = {
  slice: "fine slice",
  weave: "woven piece",
  backcomb: "soft, melted piece",
}

const kindsOf = (foils: readonly Foil[]) =>
  joinWords(
    foilKinds.flatMap((kind) => {
      const count = foils.filter((foil) => foil.kind === kind).length
      return count > 0 ? countText(count, pieces[kind]) : []
    }),
  )
