import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import { fileName } from "../core/file/fileName"
import { announce } from "../session/announcements"
import { saveFile } from "../session/saveFile"
import { useWords } from "../session/words"
import { renewed } from "./optionsOf"
import type { SheetOptions } from "./setting/sheetOptions"
import { sheetAsHtml } from "./sheetKinds"

type Props = { name: SheetName; plan: Plan; options: SheetOptions }

/** The sheet as one file for a browser or a phone, for whoever cannot read small paper. */
export function ReadAsPage({ name, plan, options }: Props) {
  const { screen } = useWords().sheets
  const save = async () => {
    const page = sheetAsHtml(name, plan, renewed(options, plan))
    const file = fileName(plan, `${name}.html`)
    if (page !== null && (await saveFile(page, file, "text/html"))) announce(screen.saved(file))
  }
  return (
    <button type="button" className="button" title={screen.readHint} onClick={save}>
      {screen.readAsPage}
    </button>
  )
}
