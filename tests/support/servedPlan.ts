import { isFoil } from "../../geometry/section/section"
import { newConsultation } from "../../web/core/document/consultation"
import type { Plan } from "../../web/core/document/schema"
import type { ChairTap, RecordedTap } from "../../web/core/document/serviceRecord"
import { examplePlan } from "../../web/core/file/examplePlan"

const minute = 60_000

import { answersOn } from "./answers"

/** The example after an invented service: foil 1 on at 5 and off at 33 after two looks, foil 2 on at 7, the rest not reached. */
export function servedPlan(): Plan {
  const plan = examplePlan()
  const foils = plan.sections.filter(isFoil)
  const tap = (atMin: number, what: ChairTap): RecordedTap => ({
    tap: what,
    atMs: atMin * minute,
    wallAt: new Date(Date.UTC(2026, 2, 9, 10, atMin)).toISOString(),
    onAtMs: what.kind === "on" ? atMin * minute : null,
    undone: false,
    note: null,
  })
  const [first, second] = foils.map(({ id }) => id)
  const seen = { level: 8, stretch: "ok", comfort: "ok", moist: true } as const
  return {
    ...plan,
    note: "Two minutes longer at the temple.\nSofter root on the left.",
    consultation: {
      ...newConsultation(),
      scalp: { seen: "sensitive", on: "2026-03-09" },
      answers: answersOn("2026-03-09", { asthma: "no", lenses: "yes" }),
      liftToLevel: 9,
      finish: "cool",
      alertTests: [
        {
          product: "House toner (invented)",
          place: "behind the ear",
          appliedAt: "2026-03-06T10:00:00Z",
          result: { outcome: "clear", readBy: "M.", readAt: "2026-03-08T11:30:00Z" },
          validUntil: null,
          visit: "2026-03-09",
          changedSince: { said: "no", on: "2026-03-09" },
        },
      ],
    },
    service: {
      startedAt: "2026-03-09T10:00:00Z",
      foils: foils.map(({ id, mapNumber, kind }, i) => ({
        id,
        mapNumber,
        kind,
        limitMin: 45,
        firstLookMin: 10,
        plannedOnMin: 4 + 2 * i,
        plannedMinutesOn: 26,
      })),
      log: [
        tap(5, { kind: "on", foil: first }),
        tap(7, { kind: "on", foil: second }),
        tap(15, { kind: "looked", foil: first, seen }),
        tap(20, { kind: "alarm", what: "eye" }),
        tap(25, {
          kind: "looked",
          foil: first,
          seen: { ...seen, level: 8.5, stretch: "soft", moist: false },
        }),
        tap(33, { kind: "off", foil: first }),
      ],
      clockNotes: [],
    },
  }
}
