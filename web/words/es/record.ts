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
    "set-note": "Cambiar las notas para la próxima vez",
  },

  /** To the client, of the hair. */
  told: told(t),

  /** What a line of the salon's record is about; lines of hair go on from its measures. */
  labels: {
    measures: "Cabello",
    "no-consultation": "Consulta",
    wanted: "Deseado",
    health: "Salud",
    "patch-test": "Prueba alérgica",
    "strand-test": "Prueba mechón",
    override: "Anulación",
    letter: "Carta médica",
    withdrawn: "Bloqueo retirado",
    people: "Quién",
    "asked-by": "Preguntó",
    "asked-aloud": "En voz alta",
  } satisfies Record<Exclude<RecordLine["code"], "hair">, string>,
  lines: recordLines(t, client),

  foil: ({ kind, place, foils }: Pick<RecordFoil, "kind" | "place" | "foils">) => {
    const what = foils === 1 ? common.kinds[kind] : `${common.kinds[kind]} en ${t.whole(foils)} papeles`
    return t.capital(`${what}, ${say(common.place, place)}`)
  },
  looks: looks(t),
  /** How long a foil was on. */
  minutesOn: (minutes: number) => `${t.minutes(minutes)} puesto`,
  /** Who placed a foil: initials, else what they are. */
  placedBy: ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
    initials === "" ? `puesto: ${roles[who]}` : `puesto por ${initials}`,
  /** Who mixed a bowl, after what was mixed. */
  mixedBy: (by: Pick<RecordPerson, "who" | "initials">) => personWords(by),
})

const places: Record<FoilPlace, string> = {
  hairline: "a lo largo de su contorno",
  top: "en la parte superior",
  sides: "en los lados",
  back: "en la parte trasera",
}

const told = (t: Tools) => {
  const pieces: Record<FoilKind, (count: number) => string> = {
    slice: (count) => t.count(count, { one: "# velo fino", other: "# velos finos" }),
    weave: (count) => t.count(count, { one: "# mecha tejida", other: "# mechas tejidas" }),
    backcomb: (count) =>
      t.count(count, { one: "# mecha suave y difuminada", other: "# mechas suaves y difuminadas" }),
    painted: (count) =>
      t.count(count, { one: "# mecha pintada a mano alzada", other: "# mechas pintadas a mano alzada" }),
  }
  const foils = ({ count, piece, places: where, kinds }: Extract<DoneCode, { code: "foils" }>) => {
    const [all, place] = [
      kinds.map((each) => pieces[each.kind](each.count)),
      where.map((each) => places[each]),
    ]
    return `${counted(t).count(count, piece)} ${t.and(place)}: ${t.and(all)}.`
  }
  return {
    done: {
      foils,
      lightened: ({ products }) => `Decolorado con ${t.and(products)}.`,
      toned: ({ products }) => `Matizado con ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
    planned: {
      foils,
      lightened: ({ products }) => `Se va a decolorar con ${t.and(products)}.`,
      toned: ({ products }) => `Se va a matizar con ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
  }
}

const scalps = {
  calm: "Cuero cabelludo calmado",
  sensitive: "Cuero cabelludo sensible",
  irritated: "Cuero cabelludo irritado",
  broken: "Cuero cabelludo con heridas",
} satisfies Record<NonNullable<Extract<RecordLine, { code: "health" }>["scalp"]>, string>
const roles = { 1: "colorista", 2: "asistente" }
/** Whose deed it was: initials, else what they are. */
const personWords = ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
  `por ${initials || `el ${roles[who]}`}`
const finishes = { cool: "tono final frío", neutral: "tono final neutro", warm: "tono final cálido" }

const checked = (by: RecordPerson | null) => (by ? `revisado ${personWords(by)}` : "revisado")

const recordLines = (t: Tools, client: ClientWords) => {
  const when = (at: DayTime | null) => (at ? `el ${t.date(at.day)}, ${at.time}` : "en día desconocido")
  const asked = (question: Question) => `sí: ${client.questions[question]}`
  return {
    measures: ({ densityPerCm2, fibreUm, frontCm, sidesCm, backCm }) =>
      `${t.whole(densityPerCm2)} cabellos por cm², ${t.whole(fibreUm)} µm de grueso; largo ${t.cm(frontCm, 1)} delante, ${t.cm(sidesCm, 1)} lados, ${t.cm(backCm, 1)} detrás`,
    "no-consultation": "Sin preguntar.",
    hair: client.hair.line,
    wanted: ({ liftToLevel, finish, upkeepWeeks, greyShare }) =>
      t.capital(
        [
          ...(liftToLevel === null ? [] : [`aclarar al nivel ${t.number(liftToLevel)}`]),
          ...(finish === null ? [] : [finishes[finish]]),
          ...(upkeepWeeks === null
            ? []
            : [t.count(upkeepWeeks, { one: "vuelve cada semana", other: "vuelve cada # semanas" })]),
          ...(greyShare === null ? [] : [`${t.percent(greyShare)} de canas`]),
        ].join(", "),
      ),
    health: ({ scalp, ageYears, yes, no, open }) =>
      [
        scalp === null ? "Cuero cabelludo sin preguntar" : scalps[scalp],
        ageYears === null
          ? "edad sin preguntar"
          : t.count(ageYears, { one: "edad # año", other: "edad # años" }),
        ...yes.map(asked),
        ...(no > 0 ? [t.count(no, { one: "# respondida no", other: "# respondidas no" })] : []),
        ...(open > 0 ? [t.count(open, { one: "# sin preguntar", other: "# sin preguntar" })] : []),
      ].join("; "),
    "patch-test": ({ product, place, applied, result }) => {
      const read =
        result === null
          ? "sin leer"
          : `${outcomes[result.outcome]}, leída ${when(result.read)}${result.readBy ? ` por ${result.readBy}` : ""}`
      return `${product}: aplicada ${when(applied)}${place ? ` (${place})` : ""}; ${read}`
    },
    "strand-test": ({ product, outcome }) => `${product}: ${strands[outcome]}`,
    override: ({ rule, mix, about, by, on, reason }) =>
      `${[stopName(rule), ...(mix ? [`mezcla ${mix}`] : []), ...(about ? [about] : [])].join(", ")}: anulado por ${by}${on ? ` el ${t.date(on)}` : ""}: ${reason}`,
    letter: ({ rule, from, dated }) => `${stopName(rule)}: ${from}, ${t.date(dated)}`,
    withdrawn: ({ rule, about, at, by }) =>
      `${[stopName(rule), ...(about ? [about] : [])].join(", ")}: cambiado o quitado ${when(at)}, ${by === "" ? "nombre no indicado" : `por ${by}`}`,
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
      `${by}, ${when(at)}: ${t.count(questions, { one: "no a # pregunta", other: "no a # preguntas" })}`,
  } satisfies Sentences<RecordLine>
}

/** A stop that an earlier Partline knew may have no name any more. */
const stopName = (rule: string) =>
  Object.hasOwn(ruleNames, rule) ? ruleNames[rule as keyof typeof ruleNames] : rule.replaceAll("-", " ")

const outcomes = { clear: "sin reacción", reacted: "REACCIÓN" }
const strands = { held: "superada", failed: "NO SUPERADA" }

const looks = (t: Tools) =>
  ({
    checked: ({ onMin, level, stretch, comfort, moist, by }) =>
      [
        level === null
          ? `${t.minutes(onMin)}: ${checked(by)}`
          : `${t.minutes(onMin)}: nivel ${t.number(level)}`,
        ...(stretch === "soft" ? ["flojo"] : stretch === "stop" ? ["se estira: parar"] : []),
        ...(comfort === "warm"
          ? ["calor en el cuero cabelludo"]
          : comfort === "burning"
            ? ["arde el cuero cabelludo"]
            : []),
        ...(moist === false ? ["seco"] : []),
        ...(level !== null && by ? [checked(by)] : []),
      ].join(", "),
    "not-checked": ({ times }) => t.count(times, { one: "sin revisar", other: "sin revisar, # veces" }),
    "roots-on": ({ afterMin, by }) =>
      `raíz a los ${t.minutes(afterMin)} de las puntas${by ? `, ${personWords(by)}` : ""}`,
    "roots-never": "la raíz nunca se puso",
    "re-coated": ({ times }) => t.count(times, { one: "reaplicado", other: "reaplicado # veces" }),
  }) satisfies Sentences<LookCode>

export type RecordWords = ReturnType<typeof record>
