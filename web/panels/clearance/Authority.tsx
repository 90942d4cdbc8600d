import type { Finding } from "../../core/cautions/cautions"
import { useWords } from "../../session/words"

/** Who decides on a finding, and where its rule is from. */
export function Authority({
  finding: { decides, source },
}: {
  finding: Pick<Finding, "decides" | "source">
}) {
  const { authority } = useWords().cautions
  return <span className="aside">{authority(decides, source)}</span>
}
