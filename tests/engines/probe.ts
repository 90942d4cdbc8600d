import { type ServedBuild, servedFile } from "../../web/host/readBuild"
import { withFirstPage } from "../support/offlineHost"

/** Notes every complaint of the page and of its workers, from before its first script on. */
const script = `(() => {
  const seen = (window.complaints = [])
  const add = (kind, text) => seen.push(kind + ": " + String(text).slice(0, 4000))
  for (const level of ["error", "warn"]) {
    const tell = console[level].bind(console)
    console[level] = (...words) => { add(level, words.map((word) => (word && word.stack) || word).join(" ")); tell(...words) }
  }
  const causeOf = ({ error }) => (error && error.cause ? " because of " + (error.cause.stack || error.cause) : "")
  addEventListener("error", (event) => add("error", event.message ? event.message + causeOf(event) : event.target && (event.target.src || event.target.href)), true)
  addEventListener("unhandledrejection", (event) => add("rejection", (event.reason && event.reason.stack) || event.reason))
  addEventListener("securitypolicyviolation", (event) => add("policy", event.violatedDirective + " " + event.blockedURI))
  window.Worker = class extends Worker {
    constructor(...given) {
      super(...given)
      this.addEventListener("message", ({ data }) => data && data.fault && add("worker", data.fault))
    }
  }
})()`

/** The build with a probe as its first script: engines without a console to read are read through it. */
export function withProbe(build: ServedBuild): ServedBuild {
  const probe = servedFile("probe.js", Buffer.from(script))
  return withFirstPage(
    build,
    (page) => page.replace("<meta charset", '<script src="./probe.js"></script><meta charset'),
    probe,
  )
}
