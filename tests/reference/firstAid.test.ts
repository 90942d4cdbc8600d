import { describe, expect, it } from "vitest"
import { emergencies } from "../../presets/chair/emergencies"
import { rinseMin } from "../../presets/sheets/aftercare"
import type { Words } from "../../web/words/en/words"
import { type Language, languageNames } from "../../web/words/every/languages"
import { everyLanguage } from "../support/words"

/**
 * First aid held against public guidance. A severe reaction: Anaphylaxis UK, "What to do in an emergency" (2026): the
 * adrenaline pen at once, then the emergency number and "anaphylaxis", then lying flat with legs raised, propped up only
 * where breathing is hard. Burns by chemicals: NHS advice, cool running water for at least 20 minutes; of an eye public
 * pages say 10 to 20, and the longest is taken.
 */
const said: Record<
  Language,
  { pen: RegExp; number: RegExp; lying: RegExp; unlessHard: RegExp; least: RegExp }
> = {
  "en-GB": {
    pen: /adrenaline pen/i,
    number: /emergency number/i,
    lying: /\blie (flat|down)/i,
    unlessHard: /only if breathing is hard|unless breathing is hard/,
    least: /at least 20 minutes/,
  },
  "en-US": {
    pen: /epinephrine auto-injector/i,
    number: /emergency number/i,
    lying: /\blie (flat|down)/i,
    unlessHard: /only if breathing is hard|unless breathing is hard/,
    least: /at least 20 minutes/,
  },
  de: {
    pen: /Adrenalin-Pen/,
    number: /Notruf/,
    lying: /hinlegen/i,
    unlessHard: /nur bei Atemnot|bei Atemnot sitzen/,
    least: /mindestens 20 Minuten/i,
  },
  es: {
    pen: /autoinyector de adrenalina/,
    number: /número de emergencias/,
    lying: /acueste|acuéstese/i,
    unlessHard: /solo si cuesta respirar|salvo si le cuesta respirar/,
    least: /al menos 20 minutos/,
  },
  fr: {
    pen: /stylo d’adrénaline/,
    number: /numéro d’urgence/,
    lying: /allonge/i,
    unlessHard: /(seulement|sauf) si respirer est difficile/,
    least: /au moins 20 minutes/,
  },
  uk: {
    pen: /шприц-ручку.*адреналіном/,
    number: /екстрен[уої]+ допомог[уи]/,
    lying: /покласти рівно|ляжте/i,
    unlessHard: /лише якщо важко дихати|якщо лежачи не важко дихати/,
    least: /щонайменше 20 хвилин/,
  },
}

const stepsOf = (name: string): readonly string[] => emergencies.find((one) => one.name === name)?.steps ?? []
const inOrder = (text: string, ...parts: RegExp[]) => {
  const places = parts.map((part) => text.search(part))
  expect([text, places.includes(-1)]).toEqual([text, false])
  expect([text, places]).toEqual([text, places.toSorted((a, b) => a - b)])
}

it("is checked in every language", () => {
  expect(everyLanguage.map(([language]) => language).toSorted()).toEqual([...languageNames].toSorted())
})

describe.each(everyLanguage)("first aid in %s", (language: Language, { chair, sheets }: Words) => {
  const { pen, number, lying, unlessHard, least } = said[language]
  const { breathing, burning, eye } = chair.emergencies.steps

  it("of a severe reaction is the pen, then the number, then lying down unless breathing is hard", () => {
    expect(stepsOf("breathing").slice(0, 3)).toEqual(["pen", "call", "lie-flat"])
    inOrder([breathing.pen, breathing.call, breathing["lie-flat"]].join(" "), pen, number, lying, unlessHard)
    expect(breathing.call).toMatch(/ana[fp]h?yl|Anaphyl|anafil|анафіл/)
  })

  it("is said at home as it is at the chair, with the number and without", () => {
    const { breathing: line } = sheets.cards.takeHome
    inOrder(line(""), pen, /_________/, lying, unlessHard)
    inOrder(line("112"), pen, /112/, lying, unlessHard)
  })

  it("rinses a burn and an eye with water, first of all that is done to them, for at least 20 minutes", () => {
    expect(rinseMin).toBeGreaterThanOrEqual(20)
    expect(stepsOf("burning").slice(0, 2)).toEqual(["foils-off", "rinse"])
    expect(stepsOf("eye")[0]).toBe("rinse")
    expect(burning.rinse).toMatch(least)
    expect(eye["keep-rinsing"]).toMatch(least)
  })
})
