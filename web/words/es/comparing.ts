import type { SectionNameCode } from "../../core/document/sectionNameCode"
import type { comparing as english } from "../en/comparing"
import { say } from "../say"

/** A learner's plan held against the model's. */
export const comparing: typeof english = (t, common) => {
  const named = (sections: readonly SectionNameCode[]) =>
    t.and(sections.map((each) => say<SectionNameCode>(common.sectionName, each)))
  const mm = (by: number) => t.told.mm(Math.abs(by), 1)
  const toward = {
    nape: "a lo largo de la raya, hacia la nuca",
    front: "a lo largo de la raya, hacia el centro de la frente",
    left: "a lo largo de la raya, hacia la izquierda de su cliente",
    right: "a lo largo de la raya, hacia la derecha de su cliente",
  }
  return {
    done: {},
    criteria: {
      side: "Lado de la cabeza",
      hairline: "Distancia al contorno",
      back: "Lugar de la raya",
      along: "Lugar a lo largo de la raya",
      angle: "Ángulo",
      length: "Longitud",
      depth: "Profundidad",
      start: "Inicio del producto",
      taken: "Tomada de",
      kind: "Tipo",
      order: "Orden",
    },
    differs: {
      "other-side": "hecha en el otro lado de la cabeza",
      "from-hairline": ({ byMm }) =>
        `${mm(byMm)} demasiado ${byMm > 0 ? "lejos detrás" : "cerca de"} el contorno`,
      "moved-over": ({ byMm }) => `raya ${mm(byMm)} demasiado ${byMm > 0 ? "atrás" : "adelante"}`,
      slid: ({ byMm, toward: way }) =>
        `desplazada ${mm(byMm)} ${way ? toward[way] : "a lo largo de la raya"}`,
      turned: ({ byDeg }) => `ángulo desviado ${t.number(byDeg, 0)}°`,
      longer: ({ byShare }) => `${t.percent(Math.abs(byShare))} demasiado ${byShare > 0 ? "larga" : "corta"}`,
      deeper: ({ byMm }) => `${mm(byMm)} ${byMm > 0 ? "de más" : "de menos"} en profundidad`,
      starts: ({ byMm }) =>
        `el producto empieza ${mm(byMm)} demasiado ${byMm > 0 ? "lejos" : "cerca"} del cuero cabelludo`,
      "wrong-band": ({ model }) =>
        `tomada del lado equivocado de la raya: debe ser ${model === "front" ? "por delante" : "por detrás"}`,
      "other-kind": ({ model, learner }) => `${common.kinds[learner]} en lugar de ${common.kinds[model]}`,
      "out-of-order": ({ model, learner }) =>
        `orden de trabajo: hecha en el lugar ${t.whole(learner)}, debe ser el ${t.whole(model)}`,
    },
    within: "dentro de la tolerancia",
    missing: "falta",
    whole: {
      "laid-anew": "El modelo se colocó en esta cabeza según sus distancias al contorno.",
      "no-room": ({ sections }) =>
        t.count(sections, {
          one: "# sección del modelo no cabe en esta cabeza y no se pidió.",
          other: "# secciones del modelo no caben en esta cabeza y no se pidieron.",
        }),
      mirrored: "Hecho como imagen en espejo: comparado con el otro lado del modelo.",
      matched: ({ matched, of }) =>
        `Emparejadas ${t.whole(matched)} de las ${t.whole(of)} secciones del modelo.`,
      missing: ({ sections }) => `Faltan, según los números del modelo: ${named(sections)}.`,
      extra: ({ sections }) => `No están en el modelo: ${named(sections)}.`,
    },
    sheet: {
      about: "Hoja de evaluación",
      assumed:
        "Las tolerancias son supuestos que fija quien evalúa. Marque cada paso según lo que haya visto.",
      step: "Paso",
      unaided: "Sin ayuda",
      withHelp: "Con ayuda",
      notYet: "Aún no",
      measured: "Medido en el plan",
      criterion: "Criterio",
      tolerance: "Tolerancia",
      met: "Cumplido",
      metOf: (met, of) => `${t.whole(met)} de ${t.whole(of)}`,
      byCriteria: "Por criterio",
      steps: "Por paso",
      whole: "En conjunto",
      learner: "Alumno o alumna",
      assessor: "Quien evalúa",
      date: "Fecha",
      remarks: "Observaciones",
      signature: "Firma",
    },
  }
}
