import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js'

/** The least that answers: a discord.js client with a constant for everything. */
const [token = '', api = ''] = process.argv.slice(2)

const client = new Client({
  intents: [GatewayIntentBits.Guilds],
  allowedMentions: { parse: [] },
  rest: { api, globalRequestsPerSecond: Number.POSITIVE_INFINITY },
})
client.on(Events.Error, console.error)
client.on(Events.InteractionCreate, (interaction) => {
  if (interaction.isAutocomplete()) interaction.respond([{ name: 'lemon', value: '#j0000' }]).catch(console.error)
  else if (interaction.isRepliable())
    interaction.reply({ content: '30 % vol', flags: MessageFlags.Ephemeral }).catch(console.error)
})
client.once(Events.ClientReady, () => console.error('Connected'))
await client.login(token)
