import '@fontsource-variable/bricolage-grotesque/opsz.css'
import '@fontsource-variable/atkinson-hyperlegible-next/index.css'
import '@fontsource-variable/atkinson-hyperlegible-mono/index.css'
import './ui/tokens.css'
import './ui/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { startLanguages } from './locales/index.ts'
import { startTheme } from './ui/theme.ts'

startTheme()
startLanguages()

const page = document.getElementById('page')
if (page !== null) {
  createRoot(page).render(
    <StrictMode>
      <App />
    </StrictMode>,
  )
}
