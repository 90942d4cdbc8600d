/**
 * Version 1 kept answers without the day they were given on, one question for every allergy, and patch tests without
 * the visit they were made for. What stopped the plan stops it still; whatever nobody can date has to be confirmed; a no
 * to less than is asked now is not asked.
 */
export function liftConsultation1(raw: unknown): unknown {
  if (!isGroup(raw) || !isGroup(raw.consultation)) return raw
  const { consultation: known } = raw
  return {
    ...raw,
    consultation: {
      ...known,
      askedBy: "",
      scalp: typeof known.scalp === "string" ? { seen: known.scalp, on: null } : known.scalp,
      answers: isGroup(known.answers) ? liftAnswers(known.answers) : known.answers,
      otherAllergy: { which: "", when: "", how: "" },
      blackHennaOn: null,
      alertTests: Array.isArray(known.alertTests) ? known.alertTests.map(liftTest) : known.alertTests,
      letters: [],
      signatures: [],
      withdrawn: [],
    },
  }
}

/** Questions that ask for more than they did: a no to them is no answer now. */
const widened = ["chemotherapy", "recentRelaxer"]

function liftAnswers({ allergy, ...answers }: Group): Group {
  const kept = Object.entries(answers).filter(([name, said]) => said !== "no" || !widened.includes(name))
  return Object.fromEntries([...kept, ...allergies(allergy)].map(([name, said]) => [name, undated(said)]))
}

/** A yes did not say to what: it holds as the other allergy, and dye is asked anew. */
const allergies = (said: unknown): [string, unknown][] => {
  if (said === "no")
    return [
      ["dyeAllergy", said],
      ["otherAllergy", said],
    ]
  return said === undefined ? [] : [["otherAllergy", said]]
}

const undated = (said: unknown) => ({ said, on: null, visit: null })

function liftTest(raw: unknown): unknown {
  if (!isGroup(raw)) return raw
  const { changedSince } = raw
  return {
    ...raw,
    visit: null,
    changedSince: typeof changedSince === "string" ? { said: changedSince, on: null } : changedSince,
  }
}

type Group = Readonly<Record<string, unknown>>
const isGroup = (raw: unknown): raw is Group => typeof raw === "object" && raw !== null && !Array.isArray(raw)
