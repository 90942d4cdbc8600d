import { type CommonWords, common } from "../en/common/common"
import { words as british, type Words } from "../en/words"
import { type Tools, toolsOf } from "../tools"
import { customaryBeside } from "../units"
import { differs } from "./differs"
import { type Differing, joined } from "./joined"
import { spelled } from "./spelling"

/** Names that every message uses. */
const namesThatDiffer: Differing<CommonWords> = {
  kinds: { backcomb: "teased section" },
}

/** American English: the British catalogue in American spelling, under the messages that say a thing in other words. */
export const words = (): Words => {
  const t: Tools = { ...toolsOf("en-US", customaryBeside), spelled }
  const names = joined<CommonWords>(spelled(common(t)), namesThatDiffer)
  const under = spelled(british(t, names))
  return joined<Words>(under, differs(t, under))
}
