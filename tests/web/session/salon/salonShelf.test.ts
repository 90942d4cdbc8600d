import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../../web/core/document/newId"
import { listSalonAside, retrySalonAside } from "../../../../web/session/salon/salonAside"
import { changeSalon, readSalon, salonStore } from "../../../../web/session/salon/salonShelf"
import { openShelf, type Shelf } from "../../../../web/storage/shelf"
import { keepSetting, readSetting } from "../../../../web/storage/shelfList"
import { keptWeighing } from "../../../support/keptWeighing"

let name: string
let shelf: Shelf
beforeEach(() => {
  name = `salon ${newId()}`
  shelf = openShelf(name)
})

const weighing = { ...keptWeighing, name: "Sample, bowl 1 of mix A" }

describe("what the salon keeps", () => {
  it("is empty at first, and there for the next visit", async () => {
    expect(await readSalon(shelf)).toMatchObject({ sheets: [], bottles: [], weighings: [] })
    await changeSalon((salon) => ({ ...salon, bottles: [20, 40], weighings: [weighing] }), shelf)
    expect(await readSalon(openShelf(name))).toMatchObject({ bottles: [20, 40], weighings: [weighing] })
  })

  it("keeps what two windows write, one after the other", async () => {
    const other = openShelf(name)
    await changeSalon((salon) => ({ ...salon, weighings: [...salon.weighings, weighing] }), shelf)
    const second = { ...weighing, id: "w2" }
    await changeSalon((salon) => ({ ...salon, weighings: [...salon.weighings, second] }), other)
    const { weighings } = await readSalon(openShelf(name))
    expect(weighings.map(({ id }) => id)).toEqual(["w1", "w2"])
  })

  it("is set aside as it was when it cannot be read, and says so", async () => {
    const strange = { sheets: "many" }
    await keepSetting(shelf, "salon", strange)
    await readSalon(shelf)
    expect(salonStore.getState().fault).toEqual({ code: "salon-unreadable" })
    await changeSalon((salon) => ({ ...salon, bottles: [30] }), shelf)
    expect(await readSetting(shelf, "salon-aside")).toEqual([{ field: "sheets", value: "many" }])
    expect(await readSalon(shelf)).toMatchObject({ bottles: [30] })
  })

  it("keeps its contact when another row cannot be read", async () => {
    const contact = { name: "Sample rooms", phone: "000", emergency: "112" }
    await keepSetting(shelf, "salon", { contact, bottles: [30, "forty"] })
    expect(await readSalon(shelf)).toMatchObject({ contact, bottles: [30] })
  })

  it("takes back what was set aside once it can be read, and keeps the rest aside", async () => {
    await keepSetting(shelf, "salon-aside", [
      { field: "weighings", value: weighing },
      { field: "bottles", value: 40 },
      { field: "bottles", value: "forty" },
      { field: null, value: "strange" },
    ])
    const left = [
      { field: "bottles", value: "forty" },
      { field: null, value: "strange" },
    ]
    await changeSalon((salon) => ({ ...salon, bottles: [20] }), shelf)
    expect(await retrySalonAside(shelf)).toEqual(left)
    expect(await listSalonAside(shelf)).toEqual(left)
    expect(await readSalon(shelf)).toMatchObject({ bottles: [20, 40], weighings: [weighing] })
  })
})
