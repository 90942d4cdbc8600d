import type { FoilKind } from "../../../geometry/section/section"
import type { Question } from "../../core/document/consultation"
import type { DoneCode } from "../../core/record/doneToday"
import type { LookCode, RecordFoil } from "../../core/record/recordFoils"
import type { DayTime, RecordLine } from "../../core/record/recordLines"
import type { RecordPerson } from "../../core/record/recordPeople"
import type { FoilPlace } from "../../core/schedule/placesOf"
import { type Sentences, say } from "../say"
import type { Tools } from "../tools"
import { ruleNames } from "./cautions/ruleNames"
import type { ClientWords } from "./client/client"
import type { CommonWords } from "./common/common"
import { pieces as counted } from "./common/pieces"

/** What is kept of a service: said to the client of what was done, and to the salon of all that was seen. */
export const record = (t: Tools, common: CommonWords, client: ClientWords) => ({
  done: {
    "set-note": "Modifier les notes pour la prochaine fois",
  },

  /** To the client, of the hair. */
  told: told(t),

  /** What a line of the salon's record is about; lines of hair go on from its measures. */
  labels: {
    measures: "Cheveux",
    "no-consultation": "Consultation",
    wanted: "Souhait",
    health: "Santé",
    "patch-test": "Touche d’essai",
    "strand-test": "Test mèche",
    override: "Dérogation",
    letter: "Courrier de médecin",
    withdrawn: "Blocage levé",
    people: "Par qui",
    "asked-by": "Demandé par",
    "asked-aloud": "À voix haute",
  } satisfies Record<Exclude<RecordLine["code"], "hair">, string>,
  lines: recordLines(t, client),

  foil: ({ kind, place, foils }: Pick<RecordFoil, "kind" | "place" | "foils">) => {
    const what = foils === 1 ? common.kinds[kind] : `${common.kinds[kind]} en ${t.whole(foils)} papillotes`
    return t.capital(`${what}, ${say(common.place, place)}`)
  },
  looks: looks(t),
  /** How long a foil was on. */
  minutesOn: (minutes: number) => `${t.minutes(minutes)} de pose`,
  /** Who placed a foil: initials, else what they are. */
  placedBy: ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
    initials === "" ? `posée : ${roles[who]}` : `posée par ${initials}`,
  /** Who mixed a bowl, after what was mixed. */
  mixedBy: (by: Pick<RecordPerson, "who" | "initials">) => personWords(by),
})

const places: Record<FoilPlace, string> = {
  hairline: "le long de la lisière de vos cheveux",
  top: "sur le dessus",
  sides: "sur les côtés",
  back: "à l’arrière",
}

const told = (t: Tools) => {
  const pieces: Record<FoilKind, (count: number) => string> = {
    slice: (count) => t.count(count, { one: "# fine tranche", other: "# fines tranches" }),
    weave: (count) => t.count(count, { one: "# mèche tricotée", other: "# mèches tricotées" }),
    backcomb: (count) =>
      t.count(count, { one: "# mèche douce et fondue", other: "# mèches douces et fondues" }),
    painted: (count) =>
      t.count(count, { one: "# mèche peinte à main levée", other: "# mèches peintes à main levée" }),
  }
  const foils = ({ count, piece, places: where, kinds }: Extract<DoneCode, { code: "foils" }>) => {
    const [all, place] = [
      kinds.map((each) => pieces[each.kind](each.count)),
      where.map((each) => places[each]),
    ]
    return `${counted(t).count(count, piece)} ${t.and(place)} : ${t.and(all)}.`
  }
  return {
    done: {
      foils,
      lightened: ({ products }) => `Éclaircissement fait avec ${t.and(products)}.`,
      toned: ({ products }) => `Patine faite avec ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
    planned: {
      foils,
      lightened: ({ products }) => `Éclaircissement prévu avec ${t.and(products)}.`,
      toned: ({ products }) => `Patine prévue avec ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
  }
}

const scalps = {
  calm: "Cuir chevelu calme",
  sensitive: "Cuir chevelu sensible",
  irritated: "Cuir chevelu irrité",
  broken: "Cuir chevelu lésé",
} satisfies Record<NonNullable<Extract<RecordLine, { code: "health" }>["scalp"]>, string>
const roles = { 1: "coloriste", 2: "renfort" }
/** Whose deed it was: initials, else what they are. */
const personWords = ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
  `par ${initials || `le ${roles[who]}`}`
const finishes = { cool: "reflet froid", neutral: "reflet neutre", warm: "reflet chaud" }

const checked = (by: RecordPerson | null) => (by ? `contrôlée ${personWords(by)}` : "contrôlée")

const recordLines = (t: Tools, client: ClientWords) => {
  const when = (at: DayTime | null) => (at ? `le ${t.date(at.day)}, ${at.time}` : "jour inconnu")
  const asked = (question: Question) => `oui : ${client.questions[question]}`
  return {
    measures: ({ densityPerCm2, fibreUm, frontCm, sidesCm, backCm }) =>
      `${t.whole(densityPerCm2)} cheveux par cm², épaisseur ${t.whole(fibreUm)} µm ; longueur ${t.cm(frontCm, 1)} devant, ${t.cm(sidesCm, 1)} côtés, ${t.cm(backCm, 1)} arrière`,
    "no-consultation": "Non demandé.",
    hair: client.hair.line,
    wanted: ({ liftToLevel, finish, upkeepWeeks, greyShare }) =>
      t.capital(
        [
          ...(liftToLevel === null ? [] : [`éclaircir à la hauteur ${t.number(liftToLevel)}`]),
          ...(finish === null ? [] : [finishes[finish]]),
          ...(upkeepWeeks === null
            ? []
            : [
                t.count(upkeepWeeks, {
                  one: "retour chaque semaine",
                  other: "retour toutes les # semaines",
                }),
              ]),
          ...(greyShare === null ? [] : [`${t.percent(greyShare)} de cheveux blancs`]),
        ].join(", "),
      ),
    health: ({ scalp, ageYears, yes, no, open }) =>
      [
        scalp === null ? "Cuir chevelu non demandé" : scalps[scalp],
        ageYears === null ? "âge non demandé" : t.count(ageYears, { one: "âge # an", other: "âge # ans" }),
        ...yes.map(asked),
        ...(no > 0 ? [t.count(no, { one: "# réponse non", other: "# réponses non" })] : []),
        ...(open > 0 ? [t.count(open, { one: "# non demandée", other: "# non demandées" })] : []),
      ].join(" ; "),
    "patch-test": ({ product, place, applied, result }) =>
      [
        `${product} : faite ${when(applied)}${place ? ` (${place})` : ""}`,
        result === null
          ? "non lue"
          : `${outcomes[result.outcome]}, lue ${when(result.read)}${result.readBy ? ` par ${result.readBy}` : ""}`,
      ].join(" ; "),
    "strand-test": ({ product, outcome }) => `${product} : ${strands[outcome]}`,
    override: ({ rule, mix, about, by, on, reason }) =>
      `${[stopName(rule), ...(mix ? [`mélange ${mix}`] : []), ...(about ? [about] : [])].join(", ")} : dérogation de ${by}${on ? ` du ${t.date(on)}` : ""} : ${reason}`,
    letter: ({ rule, from, dated }) => `${stopName(rule)} : ${from}, ${t.date(dated)}`,
    withdrawn: ({ rule, about, at, by }) =>
      `${[stopName(rule), ...(about ? [about] : [])].join(", ")} : modifié ou retiré ${when(at)}, ${by === "" ? "nom non donné" : `par ${by}`}`,
    people: ({ people }) =>
      t.capital(
        people
          .map(({ who, name, initials }) =>
            name === "" ? roles[who] : `${roles[who]} ${name} (${initials})`,
          )
          .join(", "),
      ),
    "asked-by": ({ by }) => by,
    "asked-aloud": ({ by, at, questions }) =>
      `${by}, ${when(at)} : ${t.count(questions, { one: "non à # question", other: "non à # questions" })}`,
  } satisfies Sentences<RecordLine>
}

/** A stop that an earlier Partline knew may have no name any more. */
const stopName = (rule: string) =>
  Object.hasOwn(ruleNames, rule) ? ruleNames[rule as keyof typeof ruleNames] : rule.replaceAll("-", " ")

const outcomes = { clear: "négative", reacted: "RÉACTION" }
const strands = { held: "réussi", failed: "ÉCHOUÉ" }

const looks = (t: Tools) =>
  ({
    checked: ({ onMin, level, stretch, comfort, moist, by }) =>
      [
        level === null
          ? `${t.minutes(onMin)} : ${checked(by)}`
          : `${t.minutes(onMin)} : hauteur ${t.number(level)}`,
        ...(stretch === "soft" ? ["mous"] : stretch === "stop" ? ["étirés : arrêt"] : []),
        ...(comfort === "warm"
          ? ["cuir chevelu chaud"]
          : comfort === "burning"
            ? ["cuir chevelu qui brûle"]
            : []),
        ...(moist === false ? ["sec"] : []),
        ...(level !== null && by ? [checked(by)] : []),
      ].join(", "),
    "not-checked": ({ times }) => t.count(times, { one: "non contrôlée", other: "non contrôlée, # fois" }),
    "roots-on": ({ afterMin, by }) =>
      `racine ${t.minutes(afterMin)} après les pointes${by ? `, ${personWords(by)}` : ""}`,
    "roots-never": "racine jamais posée",
    "re-coated": ({ times }) => t.count(times, { one: "réappliquée", other: "réappliquée # fois" }),
  }) satisfies Sentences<LookCode>
