/** Every route of Discord's that the bot may use: `auth` ones want the bot's token. */
const ROUTES = {
  gatewayBot: { method: 'GET', path: '/gateway/bot', auth: true },
  me: { method: 'GET', path: '/users/@me', auth: true },
  application: { method: 'GET', path: '/oauth2/applications/@me', auth: true },
  ownApplication: { method: 'GET', path: '/applications/@me', auth: true },
  globalCommands: { method: 'GET', path: '/applications/:application/commands', auth: true },
  setGlobalCommands: { method: 'PUT', path: '/applications/:application/commands', auth: true },
  guildCommands: { method: 'GET', path: '/applications/:application/guilds/:guild/commands', auth: true },
  setGuildCommands: { method: 'PUT', path: '/applications/:application/guilds/:guild/commands', auth: true },
  user: { method: 'GET', path: '/users/:user', auth: true },
  openDm: { method: 'POST', path: '/users/@me/channels', auth: true },
  guild: { method: 'GET', path: '/guilds/:guild', auth: true },
  member: { method: 'GET', path: '/guilds/:guild/members/:user', auth: true },
  channel: { method: 'GET', path: '/channels/:channel', auth: true },
  messages: { method: 'GET', path: '/channels/:channel/messages', auth: true },
  send: { method: 'POST', path: '/channels/:channel/messages', auth: true },
  message: { method: 'GET', path: '/channels/:channel/messages/:message', auth: true },
  edit: { method: 'PATCH', path: '/channels/:channel/messages/:message', auth: true },
  remove: { method: 'DELETE', path: '/channels/:channel/messages/:message', auth: true },
  callback: { method: 'POST', path: '/interactions/:interaction/:token/callback', auth: false },
  followUp: { method: 'POST', path: '/webhooks/:application/:token', auth: false },
  answer: { method: 'GET', path: '/webhooks/:application/:token/messages/:message', auth: false },
  editAnswer: { method: 'PATCH', path: '/webhooks/:application/:token/messages/:message', auth: false },
  removeAnswer: { method: 'DELETE', path: '/webhooks/:application/:token/messages/:message', auth: false },
} as const

export type RouteName = keyof typeof ROUTES

export interface Match {
  readonly name: RouteName
  readonly auth: boolean
  readonly params: Readonly<Record<string, string>>
}

const COMPILED = Object.entries(ROUTES).map(([name, { method, path, auth }]) => ({
  name: name as RouteName,
  method,
  auth,
  pattern: new RegExp(`^${path.replace(/:(\w+)/g, '(?<$1>[^/]+)')}$`),
}))

/** The route of a request; fixed paths stand before those with an id in the same place. */
export const matchRoute = (method: string, path: string): Match | undefined => {
  for (const route of COMPILED) {
    const match = route.method === method ? route.pattern.exec(path) : null
    if (match) {
      const params = Object.entries({ ...match.groups }).map(([key, value]) => [key, decodeURIComponent(value)])
      return { name: route.name, auth: route.auth, params: Object.fromEntries(params) }
    }
  }
  return undefined
}
