import { describe, expect, it } from "vitest"
import { mostNames, readNames } from "../../../../web/core/cards/namesFile"

const client = (name: string, phone = "", note = "") => ({ name, phone, note })

describe("a list of clients", () => {
  it.each([
    ["a name a line", "Ada B.\nÉmile\n", [client("Ada B."), client("Émile")]],
    ["a table with a heading", "Phone,Name\n123,Ada\n", [client("Ada", "123")]],
    ["semicolons and a mark of order", "\uFEFFKundin;Telefon\r\nAda;123\r\n", [client("Ada", "123")]],
    ["tabs", "Nombre\tTeléfono\tNotas\nAda\t1\tTea", [client("Ada", "1", "Tea")]],
    ["Ukrainian", "Ім’я,Нотатки\nОля,Чай", [client("Оля", "", "Чай")]],
    [
      "cells in quotation marks",
      'name,note\n"Brightwell, Ada","says ""hello""\nat the door"',
      [client("Brightwell, Ada", "", 'says "hello"\nat the door')],
    ],
    ["nothing", "", []],
  ])("is read: %s", (_, text, clients) => {
    expect(readNames(text, []).clients).toEqual(clients)
  })

  it("leaves out who is here, who stands twice, who has no name and what is too long, and says so", () => {
    const text = `name,phone\nADA,1\nZoë,\nZoe,\n,5\n${"x".repeat(81)},\nBad\u0007,`
    expect(readNames(text, [{ name: "Ada", phone: "1" }])).toEqual({
      clients: [client("Zoë")],
      known: 2,
      empty: 1,
      unfit: [6, 7],
      left: 0,
    })
  })

  it("takes two of one name for two where their phones differ", () => {
    expect(readNames("name,phone\nAda,1\nAda,2", []).clients).toHaveLength(2)
  })

  it("takes in no more at once than a list of cards holds well", () => {
    const text = Array.from({ length: mostNames + 3 }, (_, i) => `Client ${i}`).join("\n")
    const { clients, left } = readNames(text, [])
    expect([clients.length, left]).toEqual([mostNames, 3])
  })
})
