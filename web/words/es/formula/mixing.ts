import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Consistency } from "../../../../presets/formula/consistency"
import { visitWeeks } from "../../../../presets/formula/developers"
import type { MixReason } from "../../../core/bowls/proposeMixes"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { AdditiveCode } from "../../../core/mixing/additives"
import type { BlendProblem } from "../../../core/mixing/blend"
import type { DeveloperReason, GentleReason, Stage, WeakerOffer } from "../../../core/mixing/developer"
import type { MixNote, MixProblem } from "../../../core/mixing/mix"
import type { PouredBottle, PouringCode } from "../../../core/mixing/pouring"
import type { FoilNames } from "../../en/formula/mixing"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"

/** The mixes of a plan and their bowls: strength, ratio, grams, and why. */
export const mixing = (t: Tools, { foilCount, foils }: FoilNames) => {
  const blend = blendProblems(t)
  const weeks = t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))
  return {
    name: (letter: string) => `Mezcla ${letter}`,
    remove: (letter: string) => `Quitar la mezcla ${letter}`,
    add: (letter: string) => `Añadir la mezcla ${letter}`,
    product: "Producto con ficha",
    otherProduct: "u otro, por su nombre",
    developer: "Oxidante",
    vol: ({ volume, percent }: { volume: number; percent: number }) =>
      `${t.number(volume)} vol, ${t.number(percent, 1)}\u00a0%`,
    ratio: "Decolorante a oxidante, en peso",
    parts: (parts: number) => `1 : ${t.number(parts)}`,
    developerParts: "Oxidante por 1 parte de decolorante",
    additive: "Aditivo",
    moveFoil: "Pasar un papel a otra mezcla",
    foilIn: ({ foil, piece, kind, place }: { foil: number; piece: Piece; kind: string; place: string }) =>
      `${t.capital(foils([foil], piece))}: ${kind}, ${place}`,

    consistencies: consistencyWords,
    /** How the foils of a mix want it, and the button that takes that ratio. */
    wants: ({
      foils: count,
      consistency,
      parts,
    }: {
      foils: number
      consistency: Consistency
      parts: number
    }) => `${foilCount(count)}: ${consistencyWords[consistency]}, 1 : ${t.number(parts)}`,
    mixSo: (parts: number) => `Mezclar 1 : ${t.number(parts)}`,

    noSheet: "Este producto no tiene ficha: deciden sus propias instrucciones.",
    suggested: ({ volume }: { volume: number }) => `Sugerido: ${t.number(volume)} vol.`,
    use: (volume: number) => `Usar ${t.number(volume)} vol`,
    why: developerReasons(t),
    weaker: weakerWords(t),
    visit: ({ visit, fromLevel, toLevel, volume }: Stage & { visit: number }) =>
      visit === 1
        ? `Hoy: del nivel ${t.number(fromLevel)} al ${t.number(toLevel)} con ${t.number(volume)} vol.`
        : `Visita ${t.whole(visit)}, después de ${weeks} semanas y una vez revisado el cabello: del nivel ${t.number(fromLevel)} al ${t.number(toLevel)} con ${t.number(volume)} vol.`,

    visits: {
      title: (count: number) => t.count(count, { one: "# visita", other: "# visitas" }),
      today: (level: number) => `Planificar hoy hasta el nivel ${t.number(level)}, y la próxima visita`,
      /** The plan of the second visit: what it is called, and what stands in its note. */
      name: (plan: string) => `${plan}, visita 2`,
      after: ({
        plan,
        day,
        toLevel,
        volume,
      }: {
        plan: string
        day: string
        toLevel: number
        volume: number
      }) =>
        `Visita 2, después de «${plan}» del ${t.date(day)}. Primero mire el cabello e introduzca su nivel; el objetivo es el nivel ${t.number(toLevel)} con ${t.number(volume)} vol como máximo.`,
      stored: ({ name, day }: { name: string; day: string }) =>
        `La visita 2 está entre sus planes: ${name}, a partir del ${t.date(day)} (${t.whole(visitWeeks.range[0])} semanas, práctica común). Ese día se vuelve a preguntar por la salud.`,
      open: "Abrir la visita 2",
      undo: "Deshacer ambas cosas",
      notStored: (why: string) => `No se cambió nada: el plan de la visita 2 no se guardó. ${why}`,
      /** What is written down for the visits after this one, in the note of the plan. */
      note: ({ toLevel, volume }: { toLevel: number; volume: number }) =>
        `Próxima visita, después de ${weeks} semanas: revisar el cabello y luego hasta el nivel ${t.number(toLevel)} con ${t.number(volume)} vol.`,
    },

    suggestions: {
      title: (count: number) =>
        t.count(count, {
          one: "Una mezcla sugerida según la consulta",
          other: "# mezclas sugeridas según la consulta",
        }),
      use: "Usar esta sugerencia",
      mix: ({ volume, percent, parts, foils: numbers }: Suggestion) =>
        `${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}, para ${foils(numbers)}`,
      why: {
        ...developerReasons(t),
        "no-sheet": ({ product }) => `${product} no tiene ficha: deciden sus propias instrucciones.`,
        consistency: ({ consistency }) => `Consistencia: ${consistencyWords[consistency]}.`,
        joined: "Las cantidades demasiado pequeñas para un bol propio van con otra mezcla.",
      } satisfies Sentences<MixReason>,
    },

    unused: (letter: string) => `Ningún papel usa aún la mezcla ${letter}.`,
    wanted: ({
      foils: count,
      piece,
      mix,
      wantedG,
    }: {
      foils: number
      piece: Piece
      mix: string
      wantedG: Range
    }) =>
      t.count(count, {
        one: `${foilCount(count, piece)} usa la mezcla ${mix}: ${t.gramsRange(wantedG)} en el cabello; el bol se planifica con la cifra alta.`,
        other: `${foilCount(count, piece)} usan la mezcla ${mix}: ${t.gramsRange(wantedG)} en el cabello; los boles se planifican con la cifra alta.`,
      }),
    mixed: ({ mixedG, wasteG }: { mixedG: number; wasteG: Range }) =>
      `${t.grams(mixedG)} de mezcla, de los que ${t.gramsRange(wasteG)} quedan en el bol y el pincel o sobran.`,
    cost: (amount: number) => `Cuesta ${t.fixed(amount, 2)}.`,
    strength: ({ volume, percent, percentWw, onHeadPercent }: Strength) =>
      `${t.number(volume)} vol se vende como ${t.number(percent, 1)}\u00a0% (calculado, ${t.number(percentWw)}\u00a0% en peso; las etiquetas varían); ${t.number(onHeadPercent, 1)}\u00a0% ya mezclado.`,

    bowls: {
      title: (count: number) => (count === 0 ? "Boles" : t.count(count, { one: "# bol", other: "# boles" })),
      none: "Aún no hay papeles. Aquí aparecerán sus boles.",
      toPlacement: "Dibujar papeles",
    },
    bowl: {
      when: (minute: number) => `mezclar en el minuto ${t.whole(minute)}`,
      foils: (numbers: readonly number[], piece: Piece) => t.capital(foils(numbers, piece)),
      lightener: "Decolorante",
      developer: "Oxidante",
      strength: ({ volume, percent, parts }: { volume: number; percent: number; parts: number }) =>
        `${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}`,
      byVolume: (ml: number) => `Oxidante en volumen: ${t.number(ml)} mL`,
      grams: (grams: number) => `${t.number(grams, 1)} g`,
    },
    /** A mix in one line, before it is changed. */
    line: ({ product, volume, percent, parts, foils: count }: MixLine) =>
      `${product}, ${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%), 1 : ${t.number(parts)}, ${foilCount(count)}`,
    change: "Cambiar",
    changeThis: (letter: string) => `Cambiar la mezcla ${letter}`,
    title: "Mezclas",
    poured: pouringWords(t),
    blend,
    additives: additiveWords(t),
    problem: mixProblems(t),
    note: mixNotes(t),
  }
}

type MixLine = { product: string; volume: number; percent: number; parts: number; foils: number }
type Suggestion = { volume: number; percent: number; parts: number; foils: readonly number[] }
type Strength = { volume: number; percent: number; percentWw: number; onHeadPercent: number }

const consistencyWords: Record<Consistency, string> = {
  thick: "espesa",
  creamy: "como yogur espeso",
  loose: "fluida",
}

const levels = (t: Tools, count: number) => t.count(count, { one: "# nivel", other: "# niveles" })

const developerReasons = (t: Tools) => {
  return {
    "lift-printed": ({ liftLevels, volume, printed }) =>
      `${levels(t, liftLevels)} por aclarar; la ficha indica ${t.spread(t.number(printed.low), t.number(printed.high))} para ${t.number(volume)} vol.`,
    "lift-expected": ({ liftLevels, volume, weakerVolume }) =>
      `${levels(t, liftLevels)} por aclarar; con ${t.number(weakerVolume)} vol no se espera alcanzarlo dentro del tiempo máximo, con ${t.number(volume)} vol sí.`,
    "not-in-one-visit": ({ liftLevels, volume, visits }) =>
      `${levels(t, liftLevels)}: no se espera dentro del tiempo máximo con ${t.number(volume)} vol. Planifique ${t.whole(visits)} visitas y vuelva a valorar el cabello entre ellas.`,
    "more-than-one-visit": ({ liftLevels, mostLevels, volume, visits }) =>
      `${levels(t, liftLevels)}: es más de una visita; hasta ${t.number(mostLevels)} con ${t.number(volume)} vol, lo más fuerte que se usa aquí. Planifique ${t.whole(visits)} visitas y vuelva a valorar el cabello entre ellas.`,
    "level-now-unknown": "Falta el nivel actual. Introdúzcalo antes de elegir oxidante.",
    "target-unknown": "Falta el nivel deseado. Introdúzcalo antes de elegir oxidante.",
    "no-lift-printed": ({ product }) =>
      `${product} no indica niveles de aclaración. Introdúzcalos según el bote.`,
    "target-beyond-scale": ({ level, lightestLevel }) =>
      `El nivel deseado ${t.number(level)} sale de la escala. Elija ${t.number(lightestLevel)} o menos.`,
    "target-darker": ({ fromLevel, toLevel }) =>
      `El nivel deseado ${t.number(toLevel)} es más oscuro que el cabello (${t.number(fromLevel)}). El decolorante no oscurece: elija un nivel más claro o una mecha oscura.`,
    "at-target": ({ level }) =>
      `El cabello ya está en el nivel ${t.number(level)}. Necesita tono, no aclaración.`,
    "no-lift-allowed": ({ product }) =>
      `${product} no indica aclaración con ningún oxidante que se pueda usar aquí. Elija otro producto.`,
  } satisfies Sentences<DeveloperReason>
}

const gentleWords: Record<GentleReason, string> = {
  hairline: "el cabello del contorno es fino y aclara primero",
  fine: "el cabello fino aclara antes y cede antes",
  porous: "el cabello poroso procesa más rápido",
  lightened: "el cabello ya decolorado es más poroso",
}

const weakerWords =
  (t: Tools) =>
  ({ volume, reasons, shortByLevels }: WeakerOffer) => {
    const why = t.and(reasons.map((reason) => gentleWords[reason]))
    return shortByLevels > 0
      ? `O bien ${t.number(volume)} vol: ${why}, pero se queda a ${levels(t, shortByLevels)} del nivel deseado.`
      : `O bien ${t.number(volume)} vol: ${why}.`
  }

const blendProblems = (t: Tools) =>
  ({
    "no-bottles": "introduzca al menos una botella, por ejemplo 12,3.",
    "bottle-percent": ({ percent }) =>
      `${t.number(percent)}\u00a0% no es una concentración; introduzca de 0 a 100.`,
    "want-percent": ({ percent }) =>
      `${t.number(percent)}\u00a0% no es una concentración; introduzca de 0 a 100.`,
    "no-amount": ({ grams }) => `${t.number(grams)} g no es una cantidad; introduzca gramos por encima de 0.`,
    "want-too-weak": ({ wantPercent, weakestPercent }) =>
      `${t.number(wantPercent)}\u00a0% es más suave que la botella más suave, ${t.number(weakestPercent)}\u00a0%; añada una más suave.`,
    "want-too-strong": ({ wantPercent, strongestPercent }) =>
      `${t.number(wantPercent)}\u00a0% es más fuerte que la botella más fuerte, ${t.number(strongestPercent)}\u00a0%; elija una concentración más suave.`,
  }) satisfies Sentences<BlendProblem>

const pouringWords = (t: Tools) => {
  const bottle = ({ volume, percent, grams }: PouredBottle) =>
    `${t.number(grams, 1)} g de ${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%)`
  return {
    poured: ({ bottles }) => `Oxidante en peso: ${bottles.map(bottle).join(" + ")}.`,
    "not-poured": ({ volume, problem }) =>
      `${t.number(volume)} vol no se puede obtener con sus botellas: ${say<BlendProblem>(blendProblems(t), problem)}`,
  } satisfies Sentences<PouringCode>
}

const additiveWords = (t: Tools) =>
  ({
    "instead-of-developer": ({ grams, name }) =>
      `${t.number(grams, 1)} g de ${name}, en lugar de otro tanto de oxidante: la proporción se mantiene.`,
    "beside-developer": ({ grams, name, restParts }) =>
      `${t.number(grams, 1)} g de ${name}, además del oxidante: 1 g de decolorante por ${t.number(restParts)} g del resto.`,
  }) satisfies Sentences<AdditiveCode>

const mixProblems = (t: Tools) => {
  const said = ({
    product,
    lightener,
    developer,
  }: {
    product: string
    lightener: number
    developer: number
  }) => `${product}, proporción ${t.number(lightener)} : ${t.number(developer)}`
  return {
    "ratio-parts": (ratio) =>
      `${said(ratio)}: introduzca partes por encima de 0, primero el decolorante, por ejemplo 1 : 2.`,
    "ratio-upside-down": (ratio) =>
      `${said(ratio)}: más decolorante que oxidante. Introduzca primero el decolorante, ${t.number(ratio.developer)} : ${t.number(ratio.lightener)}.`,
    "no-strength": ({ product, percent }) =>
      `${product}, oxidante: ${t.number(percent)}\u00a0% no es una concentración; introduzca de 3 a 12\u00a0%.`,
    "scale-step": ({ grams }) =>
      `Báscula: ${t.number(grams)} g no es un paso de báscula; introduzca ${t.or([0.1, 0.5, 1, 2, 5].map((step) => t.number(step)))} g.`,
    "foil-grams": ({ foil, lowG, highG }) =>
      `Papel ${foil}: de ${t.number(lowG)} a ${t.number(highG)} g de producto; introduzca gramos de 0 o más, primero la cifra menor.`,
    "foil-minutes": ({ foil, minutes }) =>
      `Papel ${foil}: ${t.number(minutes)} minutos para colocarlo; introduzca minutos de 0 o más.`,
  } satisfies Sentences<MixProblem>
}

const mixNotes = (t: Tools) =>
  ({
    "pot-life-assumed": ({ product, minutes }) =>
      `${product} no indica cuánto dura una mezcla; se suponen ${t.minutes(minutes)} (práctica común).`,
    "foil-outlasts-bowl": ({ foil, minutes }) =>
      `Colocar el papel ${foil} lleva más que los ${t.minutes(minutes)} que dura una mezcla. Divídalo en dos.`,
    "off-ratio": ({ scaleStepG, parts, wantedParts }) =>
      `Con pasos de ${t.number(scaleStepG)} g el bol sale a 1 : ${t.number(parts)} en lugar de 1 : ${t.number(wantedParts)}. Una báscula más precisa mantiene la proporción.`,
  }) satisfies Sentences<MixNote>
