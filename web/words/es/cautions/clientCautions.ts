import type { AlertTestFault } from "../../../core/cautions/rules/alertTest"
import type { ClientCode } from "../../../core/cautions/rules/cautionCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What was found of the client, the hair and the tests. */
export const clientCautions = (t: Tools) =>
  ({
    "under-age": ({ youngestYears }) =>
      `Su cliente tiene menos de ${youngestYears} años: ni coloración ni prueba de alergia (etiqueta de los tintes de oxidación; guía del sector para decolorantes).`,
    "past-reaction": ({ product }) =>
      product === null
        ? "Su cliente ya tuvo una reacción (a tinte o a henna negra). No aplique coloración. Un médico puede investigar la causa."
        : `La prueba de alergia con ${product} dio reacción. No aplique coloración. Un médico puede investigar la causa.`,
    "breathing-reaction":
      "El decolorante ha causado pitidos, tos o ronchas a su cliente. No lo mezcle cerca; derive al médico.",
    "mixer-breathing":
      "El decolorante causa tos, pitidos o erupción a quien mezcla. Mezcla otra persona, en otra sala; derive al médico.",
    "dye-allergy":
      "Alergia a tinte, a sus ingredientes o a decolorante. No aplique coloración ni haga la prueba de alergia.",
    "scalp-hurt": ({ scalp }) =>
      scalp === "broken"
        ? "El cuero cabelludo tiene heridas. Sin servicio hasta que cicatrice."
        : "El cuero cabelludo está irritado. Sin servicio hasta que se cure.",
    "scalp-today":
      "Quemadura de sol, cortes, picaduras, piojos o infección en el cuero cabelludo. Sin servicio hasta que desaparezca.",
    "sensitive-scalp":
      "El cuero cabelludo está sensible. La etiqueta dice que no se aplique coloración: espere o consulte a un médico.",
    "face-rash":
      "Hay una erupción en la cara. La etiqueta dice que no se aplique coloración: espere o consulte a un médico.",
    "alert-test-wanting": ({ fault }) => say(alertTestFaults(t), fault),
    "toner-not-chosen": ({ wanting, testHours }) =>
      wanting.length === 2
        ? `Aún no se han elegido matizador ni tono de raíz. Mezclados con oxidante, cada uno necesita su propia prueba de alergia, leída sin reacción al menos ${testHours} horas después.`
        : wanting[0] === "toner"
          ? `Aún no se ha elegido matizador. Mezclado con oxidante, necesita su propia prueba de alergia, leída sin reacción al menos ${testHours} horas después.`
          : `Aún no se ha elegido tono de raíz. Mezclado con oxidante, necesita su propia prueba de alergia, leída sin reacción al menos ${testHours} horas después.`,
    expecting:
      "Embarazo o lactancia: consulte antes con el médico o la matrona de su cliente, o rechace el servicio.",
    "scalp-condition":
      "Afección del cuero cabelludo o cirugía reciente en él: consulte antes con el médico de su cliente, o rechace el servicio.",
    chemotherapy:
      "Quimioterapia o radioterapia, ahora o hace poco: consulte antes con el médico de su cliente, o rechace el servicio.",
    asthma:
      "Asma: una prueba de alergia sin reacción no dice nada del decolorante. Consulte antes con el médico de su cliente. Después ventile, evite el polvo, tenga el inhalador a mano y pare a la primera tos.",
    medicines:
      "Medicamento o enfermedad que afecta al cabello, la piel, la cicatrización o causa desmayos: consulte antes con el farmacéutico o el médico de su cliente, o rechace el servicio.",
    "other-allergy":
      "Su cliente tiene una alergia. Compárela con los ingredientes de cada producto y cada guante. Si figura en la lista, o no se conoce la causa, rechace el servicio.",
    "card-dye-allergy": ({ to }) =>
      `En la ficha: ${allergyTo(t, to)}; cuenta como alergia al tinte. Confirme hoy. Un no no la levanta: si la ficha está mal, corrija la ficha.`,
    "card-allergy": ({ to }) =>
      `En la ficha: ${allergyTo(t, to)}. Confirme hoy y compruebe cada producto y cada guante. Un no no la levanta: si la ficha está mal, corrija la ficha.`,
    "black-henna":
      "Su cliente ha tenido un tatuaje de henna negra: puede causar alergia al tinte. Solo cuenta una prueba de alergia aplicada después del tatuaje.",
    "hairline-loss": "Caída del cabello en el contorno. Deje fuera una banda allí; evite la tensión.",
    eyes: "Lentes de contacto fuera antes de mezclar. Mantenga el producto bien lejos de cejas y pestañas.",
    "metallic-salts":
      "Sales metálicas o henna compuesta en el cabello: con peróxido puede calentarse, humear y romperse. No lo decolore. Córtelo o espere a que haya crecido del todo.",
    henna:
      "Henna en el cabello, contenido desconocido. Pruebe antes cabello cortado en la mezcla: si hay calor, burbujas o cambio de color, no siga.",
    "strand-test-failed": ({ product }) =>
      `La prueba de mechón con ${product} no se superó: el cabello se rompió o perdió su fuerza. No lo decolore.`,
    "over-stretched":
      "El cabello mojado queda estirado o se rompe. No lo decolore. Corte, trate y pruebe otra vez otro día.",
    "recent-relaxer":
      "Alisado químico o permanente reciente. Rechace el servicio, o espere y decida con una prueba de mechón.",
    "unknown-content":
      "Tinte casero, o cobre de agua de pozo o de piscina: contenido desconocido. Pruebe antes cabello cortado en la mezcla: si hay calor, burbujas o cambio de color, no siga.",
    extensions:
      "Lleva extensiones o cabello pegado. Mantenga el decolorante lejos de uniones, adhesivos y anillas de metal.",
    "strand-test-first":
      "Cabello tratado químicamente y sin prueba de mechón anotada. Pruebe antes un mechón con esta mezcla.",
    overlap:
      "Parte del cabello ya está decolorado. No solape, salvo que lo permitan las instrucciones; proteja las puntas; revise a los 5 minutos.",
    "coated-twice": ({ foils, piece, fromMm, toMm }) =>
      `${t.count(foils.length, { one: "El", other: "Los" })} ${pieces(t).names(foils, piece)} ${t.count(foils.length, { one: "cubriría", other: "cubrirían" })} cabello ya decolorado, de ${t.whole(fromMm)} a ${t.mm(toMm)} del cuero cabelludo. Cubra solo el crecimiento nuevo, o sáltelo.`,
    porous:
      "El cabello poroso aclara y toma el tono rápido. Primera revisión a los 5 minutos; matícelo al final.",
  }) satisfies Sentences<ClientCode>

/** Why a patch test does not count today. */
export const alertTestFaults = (t: Tools) =>
  ({
    "no-test": ({ product, hours }) =>
      `No hay prueba de alergia con ${product} anotada. Aplique una y léala a las ${hours} horas.`,
    "no-time": ({ product }) => `Prueba de alergia con ${product}: faltan la fecha y la hora de aplicación.`,
    "in-future": ({ product }) =>
      `Prueba de alergia con ${product}: la fecha de aplicación está en el futuro.`,
    "too-young": ({ product, hoursOn, hours, readFrom }) =>
      `Prueba de alergia con ${product}: lleva ${hoursOn} de ${hours} horas. Léala desde el ${t.weekday(readFrom)}, ${readFrom.slice(11)}.`,
    unread: ({ product }) =>
      `Prueba de alergia con ${product}: sin leer aún. Mire la piel y anote lo que ve.`,
    reacted: ({ product }) => `Prueba de alergia con ${product}: la piel reaccionó. No aplique coloración.`,
    "reader-missing": ({ product }) =>
      `Prueba de alergia con ${product}: indique cuándo se leyó y quién la leyó.`,
    "read-in-future": ({ product }) =>
      `Prueba de alergia con ${product}: la fecha de lectura está en el futuro.`,
    "read-early": ({ product, hours }) =>
      `Prueba de alergia con ${product}: leída antes de que pasaran sus ${hours} horas. Mire la piel otra vez.`,
    "out-of-date": ({ product, lastDay }) =>
      `Prueba de alergia con ${product}: válida hasta el ${t.date(lastDay)}. Aplique una nueva.`,
    "other-visit": ({ product, madeFor }) =>
      madeFor === null
        ? `Prueba de alergia con ${product}: hecha para otra visita. Aplique una nueva, o indique hasta cuándo la da por válida su fabricante.`
        : `Prueba de alergia con ${product}: hecha para la visita del ${t.date(madeFor)}. Aplique una nueva, o indique hasta cuándo la da por válida su fabricante.`,
    "too-old": ({ product, appliedOn, mostDays }) =>
      `Prueba de alergia con ${product}: aplicada el ${t.date(appliedOn)}, más de ${mostDays} días antes de la visita. Aplique una nueva, o indique hasta cuándo la da por válida su fabricante.`,
    "before-henna": ({ product, tattooOn }) =>
      `Prueba de alergia con ${product}: aplicada antes del tatuaje de henna negra del ${t.date(tattooOn)}. Aplique una nueva.`,
    "henna-undated": ({ product }) =>
      `Prueba de alergia con ${product}: indique cuándo se hizo el tatuaje de henna negra. Solo cuenta una prueba aplicada después.`,
    "changed-since": ({ product }) =>
      `Prueba de alergia con ${product}: algo ha cambiado desde entonces. Aplique una nueva.`,
  }) satisfies Sentences<AlertTestFault>

/** An allergy nobody wrote the cause of is named all the same. */
const allergyTo = (t: Tools, to: readonly string[]) =>
  `alergia a ${t.and(to.map((what) => what.trim() || "una causa desconocida"))}`
