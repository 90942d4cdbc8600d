import { type Consultation, newConsultation } from "../document/consultation"
import type { DoneService, Plan } from "../document/schema"

/** A plan for a colleague: the drawing, the hair and the mixes, without what the client said of health or what went wrong. */
export function withoutHealth({ consultation, alarms: _, service, earlier, ...plan }: Plan): Plan {
  return {
    ...plan,
    client: { initials: plan.client.initials },
    ...(consultation && { consultation: ofHairAlone(consultation) }),
    ...(service && { service: withoutAlarms(service) }),
    ...(earlier && { earlier: earlier.map(withoutAlarms) }),
  }
}

/** Only what is named here goes out: what is asked of health one day stays behind without being named. */
const ofHairAlone = (asked: Consultation): Consultation => ({
  ...newConsultation(),
  hair: asked.hair,
  greyShare: asked.greyShare,
  liftToLevel: asked.liftToLevel,
  finish: asked.finish,
  brightest: asked.brightest,
  rootDistanceMm: asked.rootDistanceMm,
  rootMeltMm: asked.rootMeltMm,
  upkeepWeeks: asked.upkeepWeeks,
  strandTests: asked.strandTests,
})

const withoutAlarms = ({ asked: _, ...service }: DoneService): DoneService => ({
  ...service,
  log: service.log.filter(({ tap }) => tap.kind !== "alarm"),
})
