/** The processor time that some work takes, ms: a busy machine makes it wait, not work more. */
export async function processorMs(work: () => unknown): Promise<number> {
  const before = process.cpuUsage()
  await work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}
