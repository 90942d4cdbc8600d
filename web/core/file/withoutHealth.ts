import { type Consultation, newConsultation } from "../document/consultation"
import type { DoneService, Plan } from "../document/schema"

/** A plan for a colleague: the drawing, the hair and the mixes, without what the client said of health or what went wrong. */
export function withoutHealth({ consultation, alarms: _, service, earlier, ...plan }: Plan): Plan {
  return {
    ...plan,
    ...(consultation && {
      consultation: wishesOf(consultation),
    }),
    ...(service && { service: withoutAlarms(service) }),
    ...(earlier && { earlier: earlier.map(withoutAlarms) }),
  }
}

const withoutAlarms = (service: DoneService): DoneService => ({
  ...service,
  log: service.log.filter(({ tap }) => tap.kind !== "alarm"),
})

/** Of the hair and the wishes all, of everything else nothing: what is added to a consultation later stays behind too. */
const wishesOf = (known: Consultation): Consultation => ({
  ...newConsultation(),
  hair: known.hair,
  greyShare: known.greyShare,
  liftToLevel: known.liftToLevel,
  finish: known.finish,
  brightest: known.brightest,
  rootDistanceMm: known.rootDistanceMm,
  rootMeltMm: known.rootMeltMm,
  upkeepWeeks: known.upkeepWeeks,
  strandTests: known.strandTests,
})
