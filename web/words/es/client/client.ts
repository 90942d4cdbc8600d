import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import type { FinishTone, Scalp, StrandResult } from "../../../core/document/consultation"
import type { HairPlaces } from "../../en/client/hair"
import type { Tools } from "../../tools"
import { hairLine, histories, levelNames, porosities, stretches } from "./hair"
import { questions } from "./questions"
import { lookWindow, strandFaults } from "./strandTests"

export const client = (t: Tools, places: HairPlaces) => {
  const capitals = <K extends string>(names: Readonly<Record<K, string>>) =>
    Object.fromEntries(Object.entries<string>(names).map(([key, name]) => [key, t.capital(name)])) as Record<
      K,
      string
    >
  return {
    title: "Cliente",
    /** What undo calls a change of this chapter. */
    done: {
      answer: "Responder una pregunta",
      "confirm-answers": "Confirmar respuestas de otro día",
      "set-asked-by": "Indicar quién pregunta",
      "set-allergy": "Describir la alergia",
      "set-henna-date": "Poner la fecha del tatuaje de henna negra",
      "answer-rest": "Responder al resto que no",
      "clear-answer": "Borrar una respuesta",
      "set-age": "Poner la edad",
      "clear-age": "Borrar la edad",
      "set-scalp": "Indicar el cuero cabelludo",
      "clear-scalp": "Borrar el cuero cabelludo",
      "set-level": "Indicar el nivel actual",
      "set-history": "Indicar el historial",
      "set-porosity": "Indicar la porosidad",
      "clear-porosity": "Borrar la porosidad",
      "set-stretch": "Indicar la elasticidad",
      "clear-stretch": "Borrar la elasticidad",
      "set-target": "Indicar el nivel deseado",
      "set-finish": "Indicar el tono final",
      "clear-finish": "Borrar el tono final",
      "set-brightest": "Indicar dónde va más claro",
      "set-root": "Indicar la distancia a la raíz",
      "set-upkeep": "Indicar las semanas entre visitas",
      "set-grey": "Indicar las canas",
      "apply-test": "Aplicar una prueba de alergia",
      "record-test": "Anotar una prueba de alergia",
      "remove-test": "Quitar una prueba de alergia",
      "record-strand": "Anotar una prueba de mechón",
      "rename-plan": "Cambiar el nombre del plan",
      "set-day": "Cambiar la fecha",
      "set-initials": "Cambiar las iniciales",
      "set-hairline": ({ form }: { form: HairlineForm }) => `Elegir contorno: ${hairlineForms[form]}`,
      "average-head": "Usar una cabeza media",
      "tape-head": "Medir la cabeza con cinta",
      "caliper-head": "Medir la cabeza con calibre",
      "set-head-size": "Cambiar el tamaño de la cabeza",
      "set-density": "Cambiar la densidad",
      "set-texture": "Cambiar la textura del cabello",
      "set-length": ({ where }: { where: LengthPlace }) => `Cambiar el largo: ${lengthPlacesInside[where]}`,
    },
    caution:
      "Partline planifica el trabajo; no diagnostica. Las pruebas y las instrucciones del fabricante van primero, y cada cifra es una estimación con su margen.",
    plan: {
      title: "Plan",
      name: "Nombre del plan",
      day: "Fecha",
      initials: "Iniciales",
      initialsHint: "Solo iniciales: el mapa cuelga donde otros lo leen.",
    },
    consultation: { hide: "Ocultar datos de salud", show: "Mostrar datos de salud" },
    /** The parts of the consultation, each with how much of it is known. */
    steps: {
      ask: "Preguntas",
      hair: "Cabello",
      head: "Cabeza",
      goal: "Lo que desea su cliente",
      count: (done: number, of: number) => `${t.whole(done)} de ${t.whole(of)}`,
    },
    /** Health: age, scalp, questions. */
    ask: {
      askedBy: "Quién pregunta",
      alone: "Preguntar una a una",
      together: "Preguntar también",
      inherited: (day: string | null) =>
        day === null
          ? "Respondido otro día: toque la misma respuesta para confirmarla."
          : `Respondido el ${t.date(day)}: toque la misma respuesta para confirmarla.`,
      confirm: (count: number) =>
        t.count(count, {
          one: "He vuelto a preguntar: # respuesta sigue igual",
          other: "He vuelto a preguntar: # respuestas siguen igual",
        }),
      allergy: { which: "¿A qué?", when: "¿Desde cuándo?", how: "¿Cómo se manifiesta?" },
      hennaOn: "Fecha del tatuaje",
      age: "Edad",
      ageNotKnown: "Edad sin preguntar",
      years: "años",
      scalp: "Cuero cabelludo",
      scalps: {
        calm: "Calmado",
        sensitive: "Sensible",
        irritated: "Irritado",
        broken: "Con heridas",
      } satisfies Record<Scalp, string>,
      rest: (count: number) =>
        t.count(count, {
          one: "He preguntado todo esto: «No» a la que queda",
          other: "He preguntado todo esto: «No» a las # que quedan",
        }),
    },
    questions,
    hair: {
      title: "El cabello ahora",
      where: "Dónde",
      allOver: "Todo",
      zones: capitals(places.zones),
      parts: capitals(places.strandParts),
      along: "A lo largo del mechón",
      rootToEnds: "De raíz a puntas",
      level: "Nivel actual",
      levelNamed: (legend: string, level: number) => `${legend}: ${level}, ${levelNames[level]}`,
      levelNames,
      history: "Historial",
      neverTreated: "Nunca tratado",
      histories,
      porosity: "Porosidad",
      porosities,
      stretch: "Elasticidad, estirado en mojado",
      stretches,
      line: hairLine(t, places),
    },
    measures: {
      title: "Cabello",
      density: "Densidad",
      densityUnit: "por cm²",
      densities: { low: "Baja", medium: "Media", high: "Alta" },
      texture: "Textura",
      textureUnit: "µm",
      textures: { fine: "Fina", medium: "Media", coarse: "Gruesa" },
      withFigure: (word: string, value: number) => `${word} ${t.number(value)}`,
      length: "Largo, peinado liso",
      lengthPlaces,
      lengthOf: {
        front: "Largo delante",
        sides: "Largo lados",
        back: "Largo detrás",
      } satisfies Record<LengthPlace, string>,
      lengths,
      lengthOption: (place: LengthName, cm: number) => `${lengths[place]}, ${cm} cm`,
      lengthAbove: (place: LengthName) => `Por encima: ${lengthsInside[place]}`,
      lengthBelow: (place: LengthName) => `Por debajo: ${lengthsInside[place]}`,
      lengthBetween: (from: LengthName, to: LengthName) => `De ${lengthsInside[from]} a ${lengthsInside[to]}`,
    },
    goals: {
      title: "Lo que desea su cliente",
      target: "Nivel deseado, antes de matizar",
      finish: "Tono final",
      finishes: { cool: "Frío", neutral: "Neutro", warm: "Cálido" } satisfies Record<FinishTone, string>,
      brightest: "Más claro en",
      root: "Distancia a la raíz",
      roots: { tight: "Pegado", standard: "Normal", soft: "Suave" },
      rootOption: (word: string, mm: number) => `${word}, ${t.mm(mm)}`,
      upkeep: "Semanas entre visitas",
      upkeepOther: "u otro número",
      weeks: "semanas",
      grey: "Canas",
      greys: {
        "0": "Ninguna",
        "0.1": "Un décimo",
        "0.25": "Un cuarto",
        "0.5": "La mitad",
        "0.75": "La mayoría",
        "1": "Todas",
      },
    },
    tests: {
      title: "Pruebas de alergia (en la piel)",
      applyNow: (product: string) => `Aplicar la prueba ya: ${product}`,
      orOther: "u otro producto",
      product: "Producto a probar",
      choose: "Elija uno",
      apply: "Aplicar la prueba ya",
      clear: (readOn: string) =>
        `Sin reacción, leída el ${t.date(readOn)}. Válida hoy según el plazo fijado por el fabricante o el salón.`,
      place: "Dónde en la piel",
      placeHint: "donde diga el fabricante",
      applied: "Aplicada",
      result: "Resultado",
      results: { unread: "Sin leer aún", clear: "Sin reacción", reacted: "Reacción" },
      readBy: "Leída por",
      readOn: "Leída el",
      changed: "¿Algún cambio desde entonces?",
      validUntil: "Válida hasta (según la ficha del fabricante)",
      remove: "Quitar",
    },
    strandTests: {
      title: "Prueba de mechón",
      outcomes: { held: "Superada", failed: "No superada" } satisfies Record<StrandResult["outcome"], string>,
      others: "Otros productos",
    },
    head: {
      /** A tape that the two others contradict; it is taken all the same. */
      contradicts: ({ name, byMm }: { name: string; byMm: number }) =>
        `${name}: ${t.mm(Math.abs(byMm))} ${byMm > 0 ? "más" : "menos"} de lo que hacen esperar las otras dos. Vuelva a medir; hasta entonces esta medida cuenta menos.`,
      size: "Tamaño de la cabeza",
      measured: "Medida",
      ways: { average: "Media", tape: "Con cinta", caliper: "Con calibre" },
      units: "Unidades",
      unitNames: { metric: "Métricas", inches: "Pulgadas" },
      average: (around: string, over: string, frontToNape: string) =>
        `Cabeza adulta media: ${around} de perímetro, ${over} por encima, ${frontToNape} de frente a nuca. Mida para ajustarla a su cliente.`,
      hairline: "Contorno",
      /** Each measure of a head, with its usual span and how it is taken. */
      measures: {
        aroundMm: {
          name: "Perímetro",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: sobre las cejas y por detrás.`,
        },
        overMm: {
          name: "Por encima",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: desde delante de un orificio del oído hasta el otro.`,
        },
        frontToNapeMm: {
          name: "Frente a nuca",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: del contorno frontal al hueco de la nuca.`,
        },
        lengthMm: {
          name: "Largo",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: de entre las cejas a la parte trasera de la cabeza.`,
        },
        breadthMm: {
          name: "Ancho",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: en lo más ancho, sobre las orejas.`,
        },
        heightMm: {
          name: "Alto",
          hint: (low: string, high: string, unit: string) =>
            `Lo usual, de ${low} a ${high} ${unit}: del orificio del oído a lo más alto, en vertical.`,
        },
      },
      hairlines: hairlineForms,
      whole: "En esta cabeza",
      area: "Superficie con cabello",
      hairs: "Cabellos en total",
    },
    strandFaults: strandFaults(t),
    lookWindow: lookWindow(t),
  }
}

type LengthPlace = "front" | "sides" | "back"
const lengthPlaces: Record<LengthPlace, string> = { front: "Delante", sides: "Lados", back: "Detrás" }
const lengthPlacesInside: Record<LengthPlace, string> = { front: "delante", sides: "lados", back: "detrás" }

type LengthName = keyof typeof lengths
const lengths = {
  brow: "Ceja",
  ear: "Oreja",
  cheek: "Mejilla",
  chin: "Mentón",
  shoulder: "Hombro",
  collarbone: "Clavícula",
  "shoulder blade": "Omóplato",
  "bra line": "Media espalda",
  waist: "Cintura",
}
const lengthsInside: Record<LengthName, string> = {
  brow: "ceja",
  ear: "oreja",
  cheek: "mejilla",
  chin: "mentón",
  shoulder: "hombro",
  collarbone: "clavícula",
  "shoulder blade": "omóplato",
  "bra line": "media espalda",
  waist: "cintura",
}

const hairlineForms: Record<HairlineForm, string> = {
  round: "Redondo",
  straight: "Recto",
  receding: "Con entradas",
  peaked: "En pico",
}

export type ClientWords = ReturnType<typeof client>
