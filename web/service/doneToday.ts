import { type Foil, type FoilKind, isFoil } from "../../geometry/section/section"
import { countText } from "../plan/figureText"
import type { Plan } from "../plan/schema"
import { foilKinds } from "../plan/serviceRecord"
import { foilRecords } from "./chairRecord"
import { dayIn } from "./clock"
import { listed } from "./listed"
import { chairOfRecord } from "./liveService"
import { mixesUsed } from "./mixesUsed"
import { placesOf } from "./placesOf"
import type { Zone } from "./scheduleInput"
import { tonersOfPlan } from "./toners"

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
      ...(products.length > 0 ? [`Lightened with ${listed(products)}.`] : []),
      ...(toners.length > 0 ? [`Toned with ${listed(toners)}.`] : []),
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
  listed(
    foilKinds.flatMap((kind) => {
      const count = foils.filter((foil) => foil.kind === kind).length
      return count > 0 ? countText(count, pieces[kind]) : []
    }),
  )
