import type { Right } from '../fake/world.ts'
import type { Desk } from './desk.ts'
import { Refusal } from './refusal.ts'

const RIGHTS: readonly Right[] = ['ViewChannel', 'SendMessages', 'ReadMessageHistory', 'AttachFiles', 'EmbedLinks']
const LONGEST_NAME = 32

const isName = (text: string): boolean => /^[\p{L}\p{N}][\p{L}\p{N}._ -]*$/u.test(text) && text.length <= LONGEST_NAME

const roomOf = ({ scene }: Desk) => {
  const room = scene.room()
  if (room === null) throw new Refusal('That is for a channel; you are in private.')
  return room
}

export const youAre = ({ scene }: Desk): string => {
  const room = scene.room()
  return `You are ${scene.user().name}, ${room === null ? 'in private with the bot' : `in #${room.name}`}.`
}

export const become = (name: string, desk: Desk): string => {
  if (!isName(name)) throw new Refusal(`Give a name, such as: as sorrel. “${name}” is none.`)
  desk.scene.become(name)
  return youAre(desk)
}

export const go = (typed: string, desk: Desk): string => {
  const name = typed.replace(/^#/, '')
  if (!isName(name)) throw new Refusal(`Give a channel, such as: in cellar. “${typed}” is none.`)
  if (desk.scene.roomOf(name)?.isDeleted) throw new Refusal(`#${name} was deleted; give another name.`)
  desk.scene.go(name.toLowerCase() === 'private' ? null : name)
  return youAre(desk)
}

export const deny = (text: string, desk: Desk): string => {
  const room = roomOf(desk)
  const rights = text.split(/[\s,]+/).flatMap((typed) => {
    if (typed === '') return []
    const right = RIGHTS.find((known) => known.toLowerCase() === typed.toLowerCase())
    if (right === undefined) throw new Refusal(`“${typed}” is no right; there are ${RIGHTS.join(', ')}.`)
    return [right]
  })
  if (rights.length === 0) throw new Refusal(`Say which rights: ${RIGHTS.join(', ')}.`)
  desk.fake.deny(room, ...rights)
  return `In #${room.name} the bot may not: ${rights.join(', ')}.`
}

export const allow = (_: string, desk: Desk): string => {
  const room = roomOf(desk)
  desk.fake.deny(room)
  return `In #${room.name} the bot may do all that it asks for.`
}

export const remove = (what: string, desk: Desk): string => {
  if (what.toLowerCase() !== 'channel') throw new Refusal('Only the channel you are in can be deleted: delete channel.')
  const room = roomOf(desk)
  desk.fake.removeChannel(room)
  desk.scene.go(null)
  return `#${room.name} is deleted. ${youAre(desk)}`
}
