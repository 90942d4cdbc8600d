import type { DoneService, Plan } from "../document/schema"

/** A plan for a colleague: the drawing, the hair and the mixes, without what the client said of health or what went wrong. */
export function withoutHealth({ consultation, alarms: _, service, earlier, ...plan }: Plan): Plan {
  return {
    ...plan,
    ...(consultation && {
      consultation: { ...consultation, ageYears: null, scalp: null, answers: {}, alertTests: [], passes: [] },
    }),
    ...(service && { service: withoutAlarms(service) }),
    ...(earlier && { earlier: earlier.map(withoutAlarms) }),
  }
}

const withoutAlarms = (service: DoneService): DoneService => ({
  ...service,
  log: service.log.filter(({ tap }) => tap.kind !== "alarm"),
})
