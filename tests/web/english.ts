/** The English catalogue for tests of words. */

import i18next, { type TFunction } from 'i18next'
import { initReactI18next } from 'react-i18next'
import { en } from '../../web/locales/en/index.ts'

/** @returns what turns keys into English; also starts the language for components */
export async function inEnglish(): Promise<TFunction> {
  return i18next.use(initReactI18next).init({ lng: 'en', resources: { en }, interpolation: { escapeValue: false } })
}
