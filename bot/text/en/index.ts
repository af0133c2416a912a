import { botanicalProblems } from './botanical-problems.ts'
import { chatProblems } from './chat-problems.ts'
import { commandTexts } from './command-texts.ts'
import { consoleText } from './console.ts'
import { englishFormat } from './format.ts'
import { labelProblems } from './label/label-problems.ts'
import { liquidProblems } from './liquid-problems.ts'
import { planProblems } from './plan/plan-problems.ts'
import { quantityProblems } from './quantity-problems.ts'
import { recipeProblems } from './recipe-problems.ts'
import { sentences } from './sentences.ts'

/** Every word a person reads in English. Another language is another folder of the same shape. */
export const en = {
  format: englishFormat,
  sentences,
  problems: {
    ...quantityProblems,
    ...liquidProblems,
    ...recipeProblems,
    ...planProblems,
    ...botanicalProblems,
    ...labelProblems,
    ...chatProblems,
  },
  commands: commandTexts,
  console: consoleText,
}
