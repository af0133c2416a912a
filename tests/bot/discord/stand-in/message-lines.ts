import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import type { Answer } from '../fake/answer.ts'
import type { OptionValue } from '../fake/command-acts.ts'
import { type ComponentNode, walk } from '../fake/component-node.ts'
import { buttonsOf, selectsOf } from '../fake/shown-text.ts'
import type { FakeMessage } from '../fake/world.ts'
import { choiceOf, readCommand, type Typed } from './command-line.ts'
import type { Desk } from './desk.ts'
import { readFields, readTarget } from './lines.ts'
import { asRefusal, Refusal } from './refusal.ts'
import { showForm, showOffers } from './show.ts'

const ATTACHMENT = 11
const PATIENCE_MS = 15_000

const by = ({ scene, bot }: Desk, message?: FakeMessage) => {
  if (!bot.isRunning()) throw new Refusal('The bot is not running: log tells why, restart starts it.')
  return { user: scene.user(), channel: message?.channel ?? scene.channel(), patienceMs: PATIENCE_MS }
}

/** Takes an answer in; its messages are shown with all that is new. */
const told = (answer: Answer, desk: Desk): string => {
  desk.scene.meet([answer.message, ...answer.followUps])
  if (!answer.modal) return ''
  desk.form = answer
  return showForm(answer)
}

const fileAt = (typed: string): OptionValue => {
  if (!typed.startsWith('@')) throw new Refusal(`“${typed}” is no file: write @ and its path, such as @/tmp/jars.json.`)
  const path = typed.slice(1)
  try {
    return { name: basename(path), mime: 'application/octet-stream', bytes: readFileSync(path) }
  } catch (error) {
    throw new Refusal(`The file ${path} cannot be read (${(error as NodeJS.ErrnoException).code}).`)
  }
}

const sentOptions = ({ leaf, options }: Typed): Readonly<Record<string, OptionValue>> =>
  Object.fromEntries(
    Object.entries(options).map(([name, typed]) => {
      const option = leaf.options?.find((known) => known.name === name)
      if (typed === '' || !option) throw new Refusal(`${name}: is empty.`)
      return [name, option.type === ATTACHMENT ? fileAt(typed) : choiceOf(option, typed)]
    }),
  )

export const command = async (text: string, desk: Desk): Promise<string> => {
  const who = by(desk)
  const typed = readCommand(text, desk.fake.commands())
  const options = sentOptions(typed)
  return told(await asRefusal(() => desk.fake.slash(typed.path, options, who)), desk)
}

export const type = async (text: string, desk: Desk): Promise<string> => {
  const who = by(desk)
  const { path, options } = readCommand(text, desk.fake.commands())
  const last = Object.keys(options).at(-1)
  if (last === undefined) throw new Refusal('End with the option you are typing in: type /jar show jar:le')
  return showOffers(await asRefusal(() => desk.fake.autocomplete(path, options, last, who)))
}

/** What `find` finds by words in a message named by number, or else in the newest here that has it. */
const pick = <Found>(
  text: string,
  { scene }: Desk,
  find: (message: FakeMessage, words: string) => Found | undefined,
): { message: FakeMessage; found: Found } => {
  const { number, words } = readTarget(text, (known) => scene.numbered(known) !== undefined)
  const named = number === undefined ? undefined : scene.numbered(number)
  if (named?.isDeleted) throw new Refusal(`Message ${number} is deleted.`)
  const places = [
    ...(named ? [{ message: named, words }] : []),
    ...scene
      .seenHere()
      .map((message) => ({ message, words: text }))
      .reverse(),
  ]
  for (const place of places) {
    const found = find(place.message, place.words)
    if (found !== undefined) return { message: place.message, found }
  }
  throw new Refusal(`No message ${named ? `${number} ` : ''}here has “${words}”; messages shows what there is.`)
}

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase()

export const press = async (text: string, desk: Desk): Promise<string> => {
  if (text === '') throw new Refusal('Say what is written on the button: press Shaken')
  const { message, found } = pick(text, desk, ({ json }, words) => {
    const buttons = buttonsOf(json)
    return buttons.find(({ label }) => label === words) ?? buttons.find(({ label }) => isSame(label, words))
  })
  if (found.url) return `That button opens ${found.url}.`
  return told(await asRefusal(() => desk.fake.press(message, found.label, by(desk, message))), desk)
}

export const choose = async (text: string, desk: Desk): Promise<string> => {
  if (text === '') throw new Refusal('Say what you choose: choose Europe/Rome')
  const { message, found } = pick(text, desk, ({ json }, words) =>
    selectsOf(json)
      .flatMap(({ custom_id: id = '', options = [] }) => options.map((option) => ({ id, ...option })))
      .find(({ label, value }) => isSame(label, words) || isSame(value, words)),
  )
  return told(await asRefusal(() => desk.fake.choose(message, found.id, [found.value], by(desk, message))), desk)
}

export const fill = async (text: string, desk: Desk): Promise<string> => {
  const { form } = desk
  if (form === null) throw new Refusal('No form is open.')
  const fields = walk((form.modal?.components ?? []) as readonly ComponentNode[])
  const typed = Object.entries(readFields(text)).map(([name, value]) => {
    const options = fields.find(({ custom_id: id }) => id === name)?.options
    const chosen = options?.find((option) => isSame(option.label, value) || isSame(option.value, value))
    if (options && !chosen && value !== '') throw new Refusal(`${name}: “${value}” is not among its choices.`)
    return [name, chosen?.value ?? value] as const
  })
  const sent = await asRefusal(() =>
    desk.fake.submit(form, Object.fromEntries(typed), {
      ...by(desk),
      user: form.interaction.user,
      channel: form.interaction.channel,
    }),
  )
  desk.form = null
  return told(sent, desk)
}
