import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { againChanged } from '../memory/again-changed.ts'
import { freeTold } from '../memory/free-told.ts'
import { namedAgain } from '../memory/named-again.ts'
import { noSugarWished } from '../memory/no-sugar-wished.ts'
import { planOfNothing } from '../memory/plan-of-nothing.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { severalToBuy } from '../memory/scaled-again.ts'
import { syrupAsked } from '../memory/syrup-asked.ts'
import { bottledUnsized, sizeStillAsked } from './bottled-unsized.ts'
import { bottlesGone } from './bottles-gone.ts'
import { enoughAsked } from './enough-asked.ts'
import { forPeople } from './for-people.ts'
import { glassDrunk } from './glass-drunk.ts'
import { hadAtHome } from './had-at-home.ts'
import { ideasWithSpirit } from './ideas-with-spirit.ts'
import { keepsLongAsked } from './keeps-long-asked.ts'
import { measureAsked } from './measure-asked.ts'
import { ofReminders } from './one-reminder.ts'
import { ownFreezing } from './own-freezing.ts'
import { ownGlass } from './own-glasses.ts'
import { ownJarAsked } from './own-jar-asked.ts'
import { ownSteeping } from './own-steeping.ts'
import { planAsked } from './plan-asked.ts'
import { planHandled } from './plan-handled.ts'
import { pleasantry } from './pleasantries.ts'
import { readyByEvent } from './ready-by-event.ts'
import { shakingLeft } from './shaking-left.ts'
import { shelfAsked } from './shelf-asked.ts'
import { shownAgain } from './shown-again.ts'
import { startAhead } from './start-ahead.ts'
import { steepLongAsked } from './steep-long-asked.ts'
import { strengthUnknown } from './strength-unknown.ts'
import { sweetenedByTaste } from './sweetened-by-taste.ts'
import { twoCompared } from './two-compared.ts'

/** What is told by the sentence as a whole, before any frame is tried on a part of it. */
export const wholeReading = (
  sentence: Sentence,
  said: Remembered = NOTHING_SAID,
  read: (part: string) => Sentence,
): TalkReading | null =>
  pleasantry(sentence, said.question !== null) ??
  measureAsked(sentence) ??
  sweetenedByTaste(sentence, said) ??
  syrupAsked(sentence, said) ??
  noSugarWished(sentence, said) ??
  planOfNothing(sentence, said) ??
  againChanged(sentence, said, read) ??
  ideasWithSpirit(sentence, said) ??
  severalToBuy(sentence) ??
  namedAgain(sentence, said) ??
  shakingLeft(sentence) ??
  ofReminders(sentence, said) ??
  sizeStillAsked(sentence, said) ??
  bottledUnsized(sentence, said) ??
  forPeople(sentence, said) ??
  bottlesGone(sentence, said) ??
  shelfAsked(sentence) ??
  strengthUnknown(sentence, said) ??
  glassDrunk(sentence, said) ??
  hadAtHome(sentence) ??
  twoCompared(sentence, said) ??
  keepsLongAsked(sentence, said) ??
  readyByEvent(sentence, said) ??
  freeTold(sentence, said) ??
  steepLongAsked(sentence) ??
  shownAgain(sentence, said) ??
  ownFreezing(sentence, said) ??
  enoughAsked(sentence, said) ??
  ownGlass(sentence, said) ??
  ownSteeping(sentence, said) ??
  startAhead(sentence, said) ??
  planHandled(sentence, said) ??
  planAsked(sentence, said) ??
  ownJarAsked(sentence, said)
