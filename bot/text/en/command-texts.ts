import type { CommandText } from '../../chat/grammar/command-text.ts'
import type { commands } from '../../commands/index.ts'
import { botanicalText, cautionsText } from './botanical/command-texts.ts'
import { againText, calendarText, forgetText, jarListText, jarShowText, notebookText } from './jar/jar-view-texts.ts'
import { stepTexts } from './jar/step-texts.ts'
import { labelText, servingText } from './label/command-texts.ts'
import { planCommandText } from './plan/plan-command-text.ts'
import { remindersText } from './reminders-sentences.ts'
import { settingsText } from './settings-sentences.ts'
import { jarLabelText, jarTagText, shareText } from './share/share-texts.ts'

type Listed = (typeof commands)[number]

/** A text for every command and each of its options: one that is missing does not compile. */
type CommandTexts = {
  readonly [Path in Listed['path']]: CommandText & {
    readonly options: { readonly [Name in keyof Extract<Listed, { path: Path }>['input']['shape']]: string }
  }
}

export const commandTexts: CommandTexts = {
  syrup: {
    summary: 'How much water and sugar finish a strained infusion',
    options: {
      infusion: 'The strained, drained liquid: 920 ml, or better 770 g',
      jar: 'A strained jar of yours, instead: what was measured of it, and the wishes it was planned with',
      strength: 'Strength of that liquid, not of the bottle the spirit came in: 90%, or 90.6% at 28 C',
      'to-strength': 'Strength wanted: 30%',
      'to-sweetness': 'Sugar wanted: 250 g/L, or dry, everyday, rich',
      ratio: 'Sugar to water in the syrup, by mass, as 1:1; give it instead of the strength or the sweetness',
      'at-most': 'Largest volume to end with: 2 l',
      of: 'What went into the jar, to estimate the strength if you cannot measure it: 8 lemons + 30 g ginger',
      spirit: 'The spirit it went into: 1 l 95%',
    },
    examples: [
      '/syrup infusion:920 ml strength:90% to-strength:30% to-sweetness:250 g/L',
      '/syrup infusion:920 ml strength:90%',
      '/syrup infusion:930 ml of:8 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L',
    ],
  },
  mix: {
    summary: 'What these amounts make together',
    options: {
      spirit: 'Spirit, one or several: 1 l, or 750 ml 75.5% + 375 ml 40%',
      strength: 'Its strength, where it is not said beside it: 95%',
      water: 'Water: 750 ml',
      sugar: 'White sugar: 500 g, or 2 ½ cups',
    },
    examples: ['/mix spirit:1 l strength:95% water:750 ml sugar:500 g'],
  },
  dilute: {
    summary: 'How much water brings a spirit down to a strength',
    options: {
      spirit: 'Spirit, one or several: 1 l, or 750 ml 75.5% + 375 ml 40%',
      strength: 'Its strength, where it is not said beside it: 95%',
      'to-strength': 'Strength wanted: 65%',
    },
    examples: ['/dilute spirit:1 l strength:95% to-strength:65%'],
  },
  blend: {
    summary: 'What several liquids make when poured together',
    options: { parts: 'The liquids with strength and sweetness: 600 ml 47% 250 g/L + 300 ml 33% 350 g/L' },
    examples: ['/blend parts:600 ml 47% 250 g/L + 300 ml 33% 350 g/L'],
  },
  adjust: {
    summary: 'The least addition that mends a liqueur too strong, weak, sweet or dry',
    options: {
      liqueur: 'How much there is: 1.8 l',
      strength: 'Its strength, as computed when it was made: 33%',
      sweetness: 'Its sugar: 300 g/L',
      'to-strength': 'Strength wanted: 30%',
      'to-sweetness': 'Sugar wanted: 250 g/L, or dry, everyday, rich',
      'spirit-strength': 'Strength of the spirit you have, should some be needed: 95%',
    },
    examples: [
      '/adjust liqueur:1.8 l strength:33% sweetness:300 g/L to-strength:30% to-sweetness:250 g/L spirit-strength:95%',
    ],
  },
  plan: planCommandText,
  serving: servingText,
  label: labelText,
  botanical: botanicalText,
  cautions: cautionsText,
  settings: settingsText,
  reminders: remindersText,
  'jar list': jarListText,
  'jar show': jarShowText,
  notebook: notebookText,
  calendar: calendarText,
  share: shareText,
  'jar tag': jarTagText,
  'jar label': jarLabelText,
  again: againText,
  forget: forgetText,
  ...stepTexts,
}
