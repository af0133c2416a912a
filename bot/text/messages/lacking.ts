/**
 * What keeps a place from being one where somebody is reminded: a right in the channel, that the bot is not in the server,
 * that the person takes no messages.
 */
export type Lacking = 'view' | 'write' | 'history' | 'server' | 'messages'
