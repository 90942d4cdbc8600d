import { useId } from "react"
import { chooseLanguage, useLanguage, useWords } from "../../session/words"
import { languageNames, languages } from "../../words/every/languages"

/** The language of the screen, each called as it calls itself. */
export function LanguageChoice() {
  const w = useWords().plans.language
  const language = useLanguage()
  const id = useId()
  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {w.title}
      </label>
      <select
        id={id}
        value={language}
        onChange={({ target }) => {
          const chosen = languageNames.find((name) => name === target.value)
          if (chosen) void chooseLanguage(chosen)
        }}
      >
        {languageNames.map((name) => (
          <option key={name} value={name} lang={name}>
            {languages[name]}
          </option>
        ))}
      </select>
      {!language.startsWith("en") && <span className="aside">{w.unchecked}</span>}
    </div>
  )
}
