import type { APIMessageTopLevelComponent } from 'discord.js'
import { MOST_COMPONENTS, TEXT_CHARACTERS } from '../show/message-payload.ts'
import { shownAgain } from '../show/resendable-components.ts'
import { buttonsIn, type ShownButton } from './buttons-in.ts'
import { countOf, isLater, lengthOf, type Node, settles } from './mark-nudge-answered.ts'
import type { NudgeTrace } from './nudge-undo.ts'

const [ROW, TEXT] = [1, 10] as const
const ROW_BUTTONS = 5

const rowsOf = (buttons: readonly ShownButton[]): readonly Node[] =>
  Array.from({ length: Math.ceil(buttons.length / ROW_BUTTONS) }, (_, row) => ({
    type: ROW,
    components: buttons.slice(row * ROW_BUTTONS, (row + 1) * ROW_BUTTONS),
  }))

/** Those that are there, with what the press took away among them where it was. */
function buttonsBack(there: readonly ShownButton[], { button, buttons }: NudgeTrace): readonly ShownButton[] {
  const isIn = (all: readonly ShownButton[], { custom_id: id }: ShownButton) =>
    all.some((each) => each.custom_id === id)
  const pressed = buttons.find(({ custom_id: id }) => id === button.customId)
  if (pressed === undefined) return there
  const isBack = (each: ShownButton) => isLater(each) || settles(pressed, each)
  const back = buttons.filter((each) => isIn(there, each) || isBack(each))
  return [...there.filter((each) => !isIn(back, each)), ...back]
}

const withLine = (nodes: readonly Node[], said: string, instead: readonly Node[]): readonly Node[] =>
  nodes.flatMap((node): readonly Node[] => {
    if (node.type === TEXT && node.content?.trim() === said) return instead
    return [node.components === undefined ? node : { ...node, components: withLine(node.components, said, instead) }]
  })

/**
 * The nudge as it is shown once a press on it was taken back: `text` stands where it said what was recorded, and its
 * buttons are there again. Null where nothing of that changes it.
 */
export function nudgeTakenBack(
  shown: readonly APIMessageTopLevelComponent[],
  trace: NudgeTrace,
  text: string,
): APIMessageTopLevelComponent[] | null {
  const before = shown.map(shownAgain)
  const nodes = before as readonly Node[]
  const rows = rowsOf(buttonsBack(buttonsIn(before), trace))
  const texts = nodes.filter(({ type }) => type !== ROW)
  const withText = (instead: readonly Node[]) => [...withLine(texts, trace.said, instead), ...rows]
  const whole = withText([{ type: TEXT, content: text }])
  const isRoom = lengthOf(whole) <= TEXT_CHARACTERS && countOf(whole) <= MOST_COMPONENTS
  const after = isRoom ? whole : withText([])
  return JSON.stringify(after) === JSON.stringify(before) ? null : (after as unknown as APIMessageTopLevelComponent[])
}
