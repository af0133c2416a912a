/** What cannot be done, in a sentence for whoever typed the line. */
export class Refusal extends Error {}

/** Tells a fault that the fake throws, which is what Discord's own client would not let anybody do, or a bot that is silent. */
export const asRefusal = async <Result>(work: () => Promise<Result>): Promise<Result> => {
  try {
    return await work()
  } catch (error) {
    if (error instanceof Refusal) throw error
    const { message } = error as Error
    if (message.includes('no bot is connected')) throw new Refusal('The bot is not connected: nothing was sent.')
    if (message.includes('not answered within')) throw new Refusal(`The bot is silent: ${message}.`)
    throw new Refusal(`Discord would not let you send that: ${message}.`)
  }
}
