import type { Range } from "../../../geometry/hair/tradeFigures"
import { coatsOf } from "../../../geometry/section/section"
import type { Service, TimedFoil, TimedMix } from "./scheduleInput"

/** Why a service cannot be timed. A foil is its number on the map. */
export type ServiceProblem =
  | { code: "no-foils" }
  | { code: "hands"; count: number }
  | { code: "pace-share" }
  | { code: "break-backwards" }
  | { code: "foil-twice"; foil: number }
  | { code: "foil-bare"; foil: number }
  | { code: "foil-pace"; foil: number; minutes: number }
  | { code: "foil-limit"; foil: number }
  /** Its roots would go on when its ends are at their longest time, or after. */
  | { code: "roots-after-limit"; foil: number; afterMin: number; limitMin: number }
  | { code: "foil-mix"; foil: number; mix: string }
  | { code: "foil-ready"; foil: number; mix: string }
  | { code: "no-bowl"; foil: number; mix: string }
  | { code: "bowl-empty"; mix: string }
  | { code: "bowl-pot-life"; mix: string }
  | { code: "checks-apart" }

/** Everything that keeps a service from being timed; none when it can. */
export function serviceProblems(service: Service): readonly ServiceProblem[] {
  if (service.foils.length === 0) return [{ code: "no-foils" }]
  const mixes = new Map(service.mixes.map((mix) => [mix.id, mix]))
  return [
    ...handsProblems(service),
    ...repeated(service.foils).map(({ mapNumber }) => ({ code: "foil-twice" as const, foil: mapNumber })),
    ...service.foils.flatMap((foil) => foilProblems(foil, mixes)),
    ...service.mixes.flatMap(mixProblems),
    ...bowlProblems(service),
    ...when(!(service.looks.everyMin > 0), { code: "checks-apart" }),
  ]
}

const when = (isSo: boolean, problem: ServiceProblem): ServiceProblem[] => (isSo ? [problem] : [])

const handsProblems = ({ hands }: Service): ServiceProblem[] => [
  ...when(hands.length !== 1 && hands.length !== 2, { code: "hands", count: hands.length }),
  ...when(!hands.every(({ paceShare }) => paceShare > 0), { code: "pace-share" }),
  ...when(!hands.every(({ breaks }) => breaks.every(({ fromMin, toMin }) => toMin > fromMin)), {
    code: "break-backwards",
  }),
]

function foilProblems(timed: TimedFoil, mixes: ReadonlyMap<string, TimedMix>): ServiceProblem[] {
  const { mapNumber: foil, placeMin, limitMin, roots } = timed
  const isPaced = isRange(placeMin) && placeMin.low > 0 && Number.isFinite(placeMin.high)
  return [
    ...when(timed.productG.high === 0 || roots?.productG.high === 0, { code: "foil-bare", foil }),
    ...when(!isPaced, { code: "foil-pace", foil, minutes: placeMin.mid }),
    ...when(!(limitMin > 0), { code: "foil-limit", foil }),
    ...laterProblems(timed),
    ...coatsOf(timed).flatMap(({ part, mix }) => {
      const ready = part === "roots" ? roots?.readyMin : timed.readyMin[mix]
      return [
        ...when(!mixes.has(mix), { code: "foil-mix", foil, mix }),
        ...when(!(ready && isRange(ready) && ready.low >= 0), { code: "foil-ready", foil, mix }),
      ]
    }),
  ]
}

function laterProblems({ mapNumber: foil, limitMin, roots }: TimedFoil): ServiceProblem[] {
  if (!roots?.later) return []
  const { afterMin, placeMin, limitMin: rootsLimitMin } = roots.later
  return [
    ...when(!(afterMin < limitMin), { code: "roots-after-limit", foil, afterMin, limitMin }),
    ...when(!(isRange(placeMin) && placeMin.low > 0), { code: "foil-pace", foil, minutes: placeMin.mid }),
    ...when(!(rootsLimitMin > 0), { code: "foil-limit", foil }),
  ]
}

function bowlProblems({ foils, bowls }: Service): ServiceProblem[] {
  const served = new Set(bowls?.flatMap((bowl) => bowl.foils.map((id) => `${bowl.mix} ${id}`)))
  return foils.flatMap((foil) =>
    coatsOf(foil)
      .filter(({ mix }) => bowls && !served.has(`${mix} ${foil.id}`))
      .map(({ mix }) => ({ code: "no-bowl" as const, foil: foil.mapNumber, mix })),
  )
}

const mixProblems = ({ id: mix, bowlG, potLifeMin }: TimedMix): ServiceProblem[] => [
  ...when(!(bowlG > 0), { code: "bowl-empty", mix }),
  ...when(!(potLifeMin > 0), { code: "bowl-pot-life", mix }),
]

const isRange = ({ low, mid, high }: Range) => low <= mid && mid <= high

const repeated = (foils: readonly TimedFoil[]) =>
  foils.filter(({ id }, at) => foils.findIndex((foil) => foil.id === id) < at)
