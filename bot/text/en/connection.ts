interface Connected {
  readonly name: string
  readonly id: string
  readonly servers: number
  /** How many connections there are. */
  readonly of: number
}

interface Which {
  /** From 1. */
  readonly number: number
  readonly of: number
}

const inServers = (servers: number): string => (servers === 1 ? 'one server' : `${servers} servers`)

const connectionNamed = ({ number, of }: Which): string =>
  of === 1 ? 'The connection to Discord' : `Connection ${number} of ${of} to Discord`

/** What whoever runs the bot reads of its connection to Discord. */
export const connectionText = {
  connected: ({ name, id, servers, of }: Connected) =>
    `Connected to Discord as ${name} (${id}), ${of === 1 ? `in ${inServers(servers)}` : `over the first of ${of} connections`}.`,
  allConnected: ({ of, servers }: { readonly of: number; readonly servers: number }) =>
    `All ${of} connections to Discord are there, in ${inServers(servers)}.`,
  unchanged: () => 'The commands are registered as they are.',
  notRegistered: ({ sentence }: { readonly sentence: string }) =>
    `The commands could not be registered; those registered before still work. ${sentence}`,
  takenAway: ({ guildId }: { readonly guildId: string }) =>
    `The server ${guildId} still had commands of its own from an earlier DISCORD_GUILD_ID. I took them away, so each is offered once.`,
  notLookedAt: () =>
    'I could not look for commands left over from an earlier DISCORD_GUILD_ID. The next start looks again.',
  dropped: (which: Which) => `${connectionNamed(which)} is interrupted; I go on trying.`,
  resumed: (which: Which) => `${connectionNamed(which)} is back.`,
  oneLost: (which: Which) =>
    `Discord has ended connection ${which.number} of ${which.of} for good. Its servers get no answer until I am started again.`,
  stopping: () => 'Stopping: what is open is answered first.',
  stopped: () => 'Stopped.',
  faults: {
    wrong_token: () =>
      'Discord does not take this token: copy it again from the application’s page into DISCORD_TOKEN.',
    no_network: () =>
      'Discord cannot be reached: check the network (and DISCORD_API, if it is set), then start me again.',
    server_fault: () => 'Discord answers with a fault of its own: start me again in some minutes.',
    refused: () => 'Discord refuses the connection; check on the application’s page that its bot is still there.',
    too_often: () =>
      'Discord takes no more connections of this application today: it was started too often. Try again tomorrow.',
    lost: () => 'Discord has ended the connection for good; if the token was renewed, copy it into DISCORD_TOKEN.',
    outgrown: () =>
      'The bot is in more servers than its connections to Discord may have. Start me again: I take as many as Discord asks for.',
    unknown: () => 'The connection to Discord failed; the lines above say where.',
  },
}

export type ConnectionFault = keyof (typeof connectionText)['faults']
