import { app } from 'electron';
import type { Language } from '#core/plan/language.ts';
import type { PlanWindow } from '../windows/plan-window.ts';
import { shellTexts } from './shell-texts.ts';

/** The language of a window is the one its page has chosen; before it has said so, and without a window, the system's. */
const languageOf = (plan: Pick<PlanWindow, 'menu'> | null): Language =>
  plan?.menu?.language ?? (app.getLocale().startsWith('de') ? 'de' : 'en');

export const wordsFor = (plan: Pick<PlanWindow, 'menu'> | null) => shellTexts[languageOf(plan)];
