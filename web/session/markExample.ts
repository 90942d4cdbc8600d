import type { Plan } from "../core/document/schema"
import type { Shelf } from "../storage/shelf"
import { keepSetting } from "../storage/shelfList"
import { sessionStore } from "./sessionStore"

/** From now on this plan is known as the invented example; where nothing can be kept, until the page is closed. */
export async function markExample({ id }: Plan, shelf: Shelf): Promise<void> {
  sessionStore.setState({ exampleId: id })
  await keepSetting(shelf, "exampleId", id).catch(() => {})
}
