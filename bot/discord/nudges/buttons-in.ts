import type { APIMessageTopLevelComponent } from 'discord.js'

const [ROW, BUTTON] = [1, 2] as const

/** A button as a message shows it. */
export interface ShownButton {
  readonly type: typeof BUTTON
  readonly custom_id: string
}

interface Node {
  readonly type: number
  readonly custom_id?: string
  readonly components?: readonly Node[]
}

const isButton = (node: Node): node is ShownButton => node.type === BUTTON && typeof node.custom_id === 'string'

/** Every button of a message that is ours to answer. */
export const buttonsIn = (components: readonly APIMessageTopLevelComponent[]): readonly ShownButton[] =>
  (components as readonly Node[]).flatMap((node) => (node.type === ROW ? (node.components ?? []).filter(isButton) : []))

/** The components with those buttons only that `isKept`; a row that is left empty is gone. */
export const withButtons = (
  components: readonly APIMessageTopLevelComponent[],
  isKept: (button: ShownButton) => boolean,
): APIMessageTopLevelComponent[] =>
  (components as readonly Node[]).flatMap((node) => {
    if (node.type !== ROW) return [node]
    const left = (node.components ?? []).filter((each) => !isButton(each) || isKept(each))
    return left.length === 0 ? [] : [{ ...node, components: left }]
  }) as unknown as APIMessageTopLevelComponent[]
