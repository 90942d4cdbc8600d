import { describe, expect, it } from "vitest"
import { emergencies } from "../../../presets/chair/emergencies"
import { sheetNames } from "../../../presets/sheets/sheetNames"
import { newConsultation } from "../../../web/core/document/consultation"
import type { Plan } from "../../../web/core/document/schema"
import { examplePlan } from "../../../web/core/file/examplePlan"
import { layOutSheet } from "../../../web/sheets/sheetKinds"
import type { Language } from "../../../web/words/every/languages"
import { texts } from "../../support/pageTexts"
import { sheetFonts, sheetOptions } from "../../support/sheetFonts"
import { everyLanguage } from "../../support/words"

/** What each language calls the maker’s directions, the rule of the place, the licence, and a head left to metal. */
const said: Record<Language, { maker: RegExp; rule: RegExp; licence: RegExp; noMetal: RegExp }> = {
  "en-GB": {
    maker: /maker|directions/i,
    rule: /local (law|rule)/i,
    licence: /licen[cs]e/i,
    noMetal: /No metal(?! bowls)/,
  },
  "en-US": {
    maker: /maker|directions/i,
    rule: /local (law|rule)/i,
    licence: /licen[cs]e/i,
    noMetal: /No metal(?! bowls)/,
  },
  de: {
    maker: /Hersteller|Angaben auf jedem Produkt/,
    rule: /örtliche[sn]? (Recht|Regeln)/,
    licence: /Zulassung|zugelassen/,
    noMetal: /[Kk]ein Metall/,
  },
  es: {
    maker: /fabricante|instrucciones/,
    rule: /ley local|normas locales/,
    licence: /licencia/,
    noMetal: /([Ss]in|[Nn]ada de) metal(?!\p{L})/u,
  },
  fr: {
    maker: /fabricant|mode d’emploi/,
    rule: /loi locale|règles locales/,
    licence: /règles d’exercice|autorisée à exercer/,
    noMetal: /[Pp]as de métal/,
  },
  uk: { maker: /виробник|інструкці/, rule: /місцеві/, licence: /ліценз/, noMetal: /[Бб]ез металу(?!\p{L})/u },
}

const toned: Plan = {
  ...examplePlan(),
  consultation: { ...(examplePlan().consultation ?? newConsultation()), rootMeltMm: 25 },
  toning: {
    toner: { product: "House toner (invented)", developerVolume: 10, parts: 2 },
    rootShade: { product: "House root shade (invented)", developerVolume: 10, parts: 2 },
  },
}

describe.each(everyLanguage)("every sheet in %s", (language, words) => {
  const read = (sheet: (typeof sheetNames)[number], plan = toned) => {
    const { pages } = layOutSheet(sheet, plan, sheetOptions({ language, words }), sheetFonts)
    return texts(pages)
      .map(({ text }) => text)
      .join(" ")
  }
  const { maker, rule, licence, noMetal } = said[language]

  it.each(sheetNames)(
    "defers to the maker’s directions, the rule of the place and licensed practice: %s",
    (sheet) => {
      const all = read(sheet)
      for (const [what, part] of Object.entries({ maker, rule, licence }))
        expect([what, all]).toEqual([what, expect.stringMatching(part)])
    },
  )

  it.each(sheetNames)("says nothing of metal that a plan of foils could not obey: %s", (sheet) => {
    expect(read(sheet)).not.toMatch(noMetal)
  })

  it("has lines on the map for the strand test and the patch test, and the toners with their minutes", () => {
    const all = read("placement")
    const { tests, toner } = words.sheets.map
    for (const part of [tests.strand, tests.patch, toner.title]) expect(all).toContain(part)
    const after = all.slice(all.indexOf(toner.title))
    for (const product of ["House toner (invented)", "House root shade (invented)"]) {
      const own = after.slice(after.indexOf(product) + product.length)
      expect([product, own]).toEqual([product, expect.stringMatching(/^.{0,200}?\d\D{0,3}(min|хв)/s)])
    }
  })

  it("names no source and nobody in the steps of an emergency, nor on the page to take home", () => {
    const { steps, names, first } = words.chair.emergencies
    const all = emergencies.flatMap(({ name }) => [names[name], ...Object.values<string>(steps[name])])
    for (const line of [first, ...all, read("take-home")])
      expect(line).not.toMatch(/et al|\b(NHS|HSE|ANSES|Anaphylaxis UK)\b|\(\d{4}\)|\d{4};\d|\bdoi:|https?:/i)
  })
})
