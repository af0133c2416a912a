import { Client, type ClientOptions, Events, GatewayIntentBits, type Interaction } from 'discord.js'
import type { FakeDiscord } from './fake-discord.ts'

/** A real discord.js client that talks to the fake, with nothing of the bot in it. */
export interface BareClient {
  readonly client: Client
  /** What went wrong in its handlers. */
  readonly errors: unknown[]
  /** Logs in and resolves when the client is ready. */
  readonly ready: (token?: string) => Promise<void>
  /** Answers interactions. */
  readonly answer: (handle: (interaction: Interaction) => Promise<unknown>) => void
}

export const bareClient = (fake: FakeDiscord, options: Partial<ClientOptions> = {}): BareClient => {
  const errors: unknown[] = []
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages],
    allowedMentions: { parse: [] },
    rest: { api: fake.api, retries: 1, timeout: 2000, offset: 5 },
    ...options,
  })
  client.on(Events.Error, (error) => errors.push(error))
  return {
    client,
    errors,
    ready: async (token = fake.token) => {
      const isReady = new Promise((done) => client.once(Events.ClientReady, done))
      await client.login(token)
      await isReady
    },
    answer: (handle) => {
      client.on(Events.InteractionCreate, (interaction) => {
        handle(interaction).catch((error: unknown) => errors.push(error))
      })
    },
  }
}
