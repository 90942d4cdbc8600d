/** Names, at the end of a run, each test that passed only when it was tried again: it waits for something it does not name. */
export default class SecondTry {
  names = []

  onTestCaseResult(test) {
    if (test.diagnostic()?.flaky) this.names.push(`${test.module.relativeModuleId}: ${test.fullName}`)
  }

  onTestRunEnd() {
    if (this.names.length > 0) console.log(`passed at the second try only:\n${this.names.join("\n")}`)
  }
}
