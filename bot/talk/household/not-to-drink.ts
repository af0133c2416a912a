import { nearRefusedIn } from '../../../core/botanical/refuse/near-said.ts'
import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'

/** Whether a text names what nobody may drink, or a slip of its name: of that it is never asked how much there is. */
export const isNotToDrink = (text: string): boolean => refusedIn(text).length > 0 || nearRefusedIn(text) !== null
