import type { DirectionName } from "../../../geometry/parting/direction"
import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FaultName } from "../../../presets/sheets/teaching"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type {
  AimCode,
  PieceCode,
  SelfCheckCode,
  TeachingTimeCode,
  ToolCode,
} from "../../core/teaching/teachingPlan"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"
import { stepLabels, stepLines, stepTitles } from "./teachingSteps"

/** A technique as it is told to a class. */
export const teaching = (t: Tools, common: CommonWords) => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  stepLabels,
  stepLines: stepLines(t, common),
  divide: "Divida la cabeza",
})

const places: Record<FoilPlace, string> = {
  hairline: "el contorno",
  top: "la parte superior",
  sides: "los lados",
  back: "la parte trasera",
}

const ways: Record<DirectionName, string> = {
  "parallel to hairline": "a lo largo del contorno",
  horizontal: "en horizontal",
  "diagonal forward": "en diagonal adelante",
  "diagonal back": "en diagonal atrás",
  vertical: "en vertical",
}

const aim = (t: Tools, common: CommonWords) => {
  const things: Record<FoilKind, readonly [one: string, several: string]> = {
    slice: ["velo", "velos"],
    weave: ["tejido", "tejidos"],
    backcomb: ["sección cardada", "secciones cardadas"],
    painted: ["panel pintado", "paneles pintados"],
  }
  const piece = ({ kind, direction, isOne }: PieceCode) => `${things[kind][isOne ? 0 : 1]} ${ways[direction]}`
  return {
    "nothing-drawn": "Aún no hay nada dibujado.",
    brighten: ({ places: where, foils, pieces }) =>
      t.count(foils, {
        one: `Aclarar ${t.and(where.map((each) => places[each]))} con # sección: ${t.and(pieces.map(piece))}.`,
        other: `Aclarar ${t.and(where.map((each) => places[each]))} con # secciones: ${t.and(pieces.map(piece))}.`,
      }),
    leave: ({ names }) => `Dejar fuera: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  } satisfies Sentences<AimCode>
}

const tools = (t: Tools, common: CommonWords) => {
  const carriers: Record<CarrierKind, (count: number) => string> = {
    foil: (count) => t.count(count, { one: "# papel de aluminio", other: "# papeles de aluminio" }),
    board: (count) => t.count(count, { one: "# tabla", other: "# tablas" }),
    "open-air": (count) => t.count(count, { one: "# mecha al aire", other: "# mechas al aire" }),
    film: (count) => t.count(count, { one: "# mecha bajo film", other: "# mechas bajo film" }),
  }
  const forms = {
    powder: "decolorante en polvo",
    clay: "decolorante en arcilla",
    cream: "decolorante en crema",
    liquid: "decolorante líquido",
  }
  return {
    comb: "Peine de cola, pulverizador de agua, un pincel por bol",
    "section-clips": ({ count }) =>
      `Pinzas: ${t.whole(count)}, una por cada sección de la cabeza; no de metal cerca del producto`,
    clips: ({ low, high }) =>
      `Pinzas: ${t.spread(t.whole(low), t.whole(high))}; no de metal cerca del producto`,
    carriers: ({ carrier, count, widthMm, lengthMm }) =>
      carrier === "open-air" || carrier === "film"
        ? carriers[carrier](count)
        : `${carriers[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}`,
    mix: ({ mix, form, developerVolume, ratio }) =>
      t.capital(
        `${common.mix(mix)}: ${form ? forms[form] : "producto según sus instrucciones"}, ${t.number(developerVolume)} vol, ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`,
      ),
    bowls: ({ count }) =>
      t.count(count, {
        one: "# bol con tapa suelta, no de metal; báscula",
        other: "# boles con tapa suelta, no de metal; báscula",
      }),
    keeping: "Guantes, protección ocular, delantal, toalla, algodón húmedo para el contorno",
    minding: ({ piece }) =>
      `Cronómetro; lápiz para anotar cuándo se pone ${{ foil: "cada papel", panel: "cada panel", both: "cada papel y panel" }[piece]}`,
  } satisfies Sentences<ToolCode>
}

const times = (t: Tools) =>
  ({
    "first-check": ({ firstMin, delicateMin, everyMin, piece }) =>
      `Primera revisión ${t.minutes(firstMin)} después de poner ${{ foil: "el primer papel", panel: "el primer panel", both: "el primero" }[piece]}, ${t.minutes(delicateMin)} en el contorno y en cabello fino, poroso o decolorado; después cada ${t.minutes(everyMin)} (práctica común). Las instrucciones del fabricante van primero.`,
    "max-time": ({ mix, maxMin, isFromSheet, firstCheckMin }) =>
      [
        isFromSheet
          ? `Mezcla ${mix}: tiempo máx. ${t.minutes(maxMin)} (de su ficha de producto).`
          : `Mezcla ${mix}: tiempo máx. ${t.minutes(maxMin)} (práctica común; ninguna ficha lo dice). Lea antes las instrucciones.`,
        ...(firstCheckMin ? [`Primera revisión a los ${t.minutes(firstCheckMin)}.`] : []),
      ].join(" "),
    "each-foil": ({ piece }) =>
      `El tiempo de ${{ foil: "cada papel", panel: "cada panel", both: "cada papel y panel" }[piece]} corre desde el minuto en que su producto toca el cabello por primera vez: anótelo, y retire cada uno cuando esté listo.`,
    "learner-pace": ({ lowMin, highMin, foils }) =>
      t.count(foils, {
        one: `A ritmo de aprendiz, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} por papel, # papel lleva ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} de colocación (práctica común).`,
        other: `A ritmo de aprendiz, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} por papel, # papeles llevan ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} de colocación (práctica común).`,
      }),
  }) satisfies Sentences<TeachingTimeCode>

const mostNumbered = 8

const checks = (t: Tools, common: CommonWords) =>
  ({
    "see-through": ({ slices }) =>
      slices.length > mostNumbered
        ? "Veo la luz a través de cada velo fino."
        : t.count(slices.length, {
            one: `Veo la luz a través del velo ${t.and(slices.map(t.whole))}.`,
            other: `Veo la luz a través de los velos ${t.and(slices.map(t.whole))}.`,
          }),
    "even-stitches": ({ stitchMm, gapMm, weave }) =>
      `Mis puntadas son iguales: ${t.mm(stitchMm, 1)} tomados, ${t.mm(gapMm, 1)} dejados, en todo el tejido ${t.whole(weave)}.`,
    "cushion-dry": "El colchón está seco; el producto empieza después de él.",
    "product-start": ({ rootMm }) =>
      `El producto empieza a ${t.mm(rootMm, 1)} o más del cuero cabelludo; no hay nada en la piel.`,
    "both-faces": "Las dos caras de cada mechón están cubiertas, sin puntos secos.",
    "left-out-dry": ({ names }) =>
      `Fuera y aún seco: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
    "sides-match": "Izquierda y derecha coinciden en el espejo.",
    "minutes-noted": ({ piece }) =>
      `Anoté el minuto en que puse ${{ foil: "cada papel", panel: "cada panel", both: "cada papel y panel" }[piece]} y revisé a tiempo.`,
    "foils-sound": "Ningún papel resbala ni se hincha, y ninguno está caliente.",
  }) satisfies Sentences<SelfCheckCode>

/** A fault, what it comes from, and what to do about it. */
const faults: Record<FaultName, { fault: string; cause: string; cure: string }> = {
  "bleeding-root": {
    fault: "Filtrado en la raíz",
    cause: "Demasiado producto, o empieza justo en el borde del papel.",
    cure: "Menos en el pincel; mantenga limpio el pliegue; limpie el borde antes de cerrar.",
  },
  "band-near-root": {
    fault: "Una banda cerca de la raíz",
    cause: "El producto no llega, o el papel se ha deslizado hacia abajo.",
    cure: "Coloque el papel donde empieza el plan y sujételo ahí mientras cubre.",
  },
  "dark-spots": {
    fault: "Manchas oscuras dentro",
    cause: "Zonas secas: una sola cara cubierta, o cabello sin extender.",
    cure: "Extienda el cabello, cubra las dos caras, mírelo contra la luz.",
  },
  "slice-too-deep": {
    fault: "Velo demasiado grueso",
    cause: "La cola del peine tomó cabello de detrás de la raya.",
    cure: "Haga otra vez la raya. Un velo fino deja ver la luz a través.",
  },
  "last-foil-dark": {
    fault: "Último papel demasiado oscuro",
    cause: "Se puso mucho después del primero y se retiró con él.",
    cure: "Retire cada papel cuando esté listo, no todos a la vez.",
  },
  "last-panel-dark": {
    fault: "Último panel demasiado oscuro",
    cause: "Se pintó mucho después del primero y se retiró con él.",
    cure: "Retire cada panel cuando esté listo, no todos a la vez.",
  },
  "foil-slipping": {
    fault: "Papel que resbala",
    cause: "Papel demasiado pesado para la sección, o raíz mojada de producto.",
    cure: "Un papel más corto, doblado una vez; empiece el producto un poco más abajo.",
  },
  "cushion-wet": {
    fault: "Colchón mojado",
    cause: "El producto llegó al cardado.",
    cure: "Límpielo; empiece después del colchón, en cabello liso.",
  },
}

export type TeachingWords = ReturnType<typeof teaching>
