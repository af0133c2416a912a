import type { Answer } from './answer.ts'
import { type ComponentNode, TYPE, walk } from './component-node.ts'
import { KIND } from './interactions.ts'
import type { Json } from './json.ts'
import { buttonsOf, selectsOf } from './shown-text.ts'
import { type By, type Stage, startInteraction } from './start-interaction.ts'
import type { FakeMessage } from './world.ts'

/** A button by what is written on it, or one by its custom_id whether the message still has it or not. */
export type Pressed = string | { readonly customId: string }

const BUTTON = 2
const STRING_SELECT = 3

const pressedId = (message: FakeMessage, pressed: Pressed): string => {
  if (typeof pressed !== 'string') return pressed.customId
  const buttons = buttonsOf(message.json)
  const button = buttons.find(({ label }) => label === pressed)
  if (!button?.customId)
    throw new Error(`no button "${pressed}"; there are: ${buttons.map(({ label }) => label).join(', ')}`)
  if (button.isDisabled) throw new Error(`the button "${pressed}" is disabled`)
  return button.customId
}

const seenBy = (message: FakeMessage | undefined, { user }: By, stage: Stage): FakeMessage => {
  if (!message) throw new Error('there is no message')
  if (message.onlyFor && message.onlyFor !== (user ?? stage.user)) throw new Error('only its owner sees this message')
  return message
}

/** Fields of a form with what was typed in, in the shape they were asked in. */
const filled = (top: readonly ComponentNode[], typed: Readonly<Record<string, string>>): readonly Json[] => {
  const fill = (node: ComponentNode): Json => {
    const { type, component, components } = node
    if (component) return { type, id: 1, component: fill(component) }
    if (components) return { type, id: 1, components: components.map(fill) }
    const chosen = node.options?.find((option) => option.default)?.value
    const value = typed[node.custom_id ?? ''] ?? node.value ?? chosen ?? ''
    if (type === TYPE.textInput && value === '' && node.required !== false)
      throw new Error(`${node.custom_id} is required`)
    if (value.length > (node.max_length ?? 4000)) throw new Error(`${node.custom_id} is too long`)
    if (value !== '' && value.length < (node.min_length ?? 0)) throw new Error(`${node.custom_id} is too short`)
    return type === TYPE.select
      ? { type, id: 1, custom_id: node.custom_id, values: value === '' ? [] : [value] }
      : { type, id: 1, custom_id: node.custom_id, value }
  }
  const asked = walk(top).flatMap(({ custom_id: id }) => id ?? [])
  for (const id of Object.keys(typed)) if (!asked.includes(id)) throw new Error(`the form has no field ${id}`)
  return top.filter(({ type }) => type !== TYPE.text).map(fill)
}

/** What people do with messages and forms. */
export const messageActs = (stage: Stage) => ({
  /** Presses a button of a message. */
  press: async (message: FakeMessage | undefined, pressed: Pressed, by: By = {}): Promise<Answer> => {
    const source = seenBy(message, by, stage)
    const data = { custom_id: pressedId(source, pressed), component_type: BUTTON, id: 1 }
    return startInteraction(stage, { kind: KIND.component, data, what: `press of ${data.custom_id}`, source }, by)
  },
  /** Chooses values in the select with this custom_id. */
  choose: async (
    message: FakeMessage | undefined,
    customId: string,
    values: readonly string[],
    by: By = {},
  ): Promise<Answer> => {
    const source = seenBy(message, by, stage)
    const select = selectsOf(source.json).find(({ custom_id: id }) => id === customId)
    if (!select) throw new Error(`no select ${customId}`)
    for (const value of values)
      if (!select.options?.some((option) => option.value === value)) throw new Error(`no option ${value}`)
    const data = { custom_id: customId, component_type: STRING_SELECT, id: 1, values }
    return startInteraction(stage, { kind: KIND.component, data, what: `choice in ${customId}`, source }, by)
  },
  /** Fills in the form that an answer has shown, by custom_id, and sends it. */
  submit: async (
    { modal, interaction }: Answer,
    typed: Readonly<Record<string, string>>,
    by: By = {},
  ): Promise<Answer> => {
    if (!modal) throw new Error('no form was shown')
    const { user, channel, source, isPersonal, metadata: trigger } = interaction
    const components = filled(modal.components as readonly ComponentNode[], typed)
    const data = { custom_id: modal.custom_id, components }
    const same: By = { user, channel, install: isPersonal ? 'user' : 'guild', ...by }
    return startInteraction(
      stage,
      { kind: KIND.modal, data, what: `form ${String(modal.custom_id)}`, source, trigger },
      same,
    )
  },
})
