import type { CautionsWords } from "../en/cautions/cautions"
import { alertTestFaults } from "../en/cautions/clientCautions"
import { say } from "../say"
import type { Tools } from "../tools"
import type { Differing } from "./joined"
import { spelledMessage } from "./spelling"

export const cautions = (t: Tools, under: CautionsWords): Differing<CautionsWords> => {
  const reacted = ({ product }: { product: string }) =>
    `Patch test with ${product}: the skin reacted. Do not color.`
  const faults = { ...alertTestFaults(t), reacted }
  return {
    panel: { letterFrom: "Doctor or clinic" },
    testFaults: { reacted },
    why: {
      "alert-test-wanting": ({ fault }) => say(faults, fault),
      "past-reaction": ({ product }) =>
        product === null
          ? "The client has reacted before (to color or black henna). Do not color. A doctor can test for the cause."
          : `The patch test with ${product} reacted. Do not color. A doctor can test for the cause.`,
      "under-age": spelledMessage(under.why["under-age"]),
    },
  }
}
