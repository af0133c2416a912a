/** What whoever runs the bot reads of its connection to Discord. */
export const connectionText = {
  connected: ({ name, id, servers }: { readonly name: string; readonly id: string; readonly servers: number }) =>
    `Connected to Discord as ${name} (${id}), in ${servers === 1 ? 'one server' : `${servers} servers`}.`,
  unchanged: () => 'The commands are registered as they are.',
  notRegistered: ({ sentence }: { readonly sentence: string }) =>
    `The commands could not be registered; those registered before still work. ${sentence}`,
  dropped: () => 'The connection to Discord is interrupted; I go on trying.',
  resumed: () => 'The connection to Discord is back.',
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
    unknown: () => 'The connection to Discord failed; the lines above say where.',
  },
}

export type ConnectionFault = keyof (typeof connectionText)['faults']
