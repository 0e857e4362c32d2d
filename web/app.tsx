/** Which screen stands at which address. Each is loaded only where it is needed, and each fails alone. */

import { lazy, type ReactNode, Suspense } from 'react'
import { useTranslation } from 'react-i18next'
import { Route, Switch } from 'wouter'
import { Waiting } from './parts/waiting.tsx'
import { FaultBoundary } from './ui/fault-boundary.tsx'

const Bench = lazy(() => import('./bench/bench.tsx'))
const Board = lazy(() => import('./board/board.tsx'))
const ComeIn = lazy(() => import('./join/come-in.tsx'))
const Desk = lazy(() => import('./desk/desk.tsx'))
const EnterDesk = lazy(() => import('./desk/enter-desk.tsx'))
const Nowhere = lazy(() => import('./join/nowhere.tsx'))
const Practice = lazy(() => import('./practice/practice.tsx'))

export function App() {
  return (
    <Switch>
      <Route path="/desk/enter">
        <Region>
          <EnterDesk />
        </Region>
      </Route>
      <Route path="/desk/:rest?">
        <Region>
          <Desk />
        </Region>
      </Route>
      <Route path="/view">
        <Region>
          <Board />
        </Region>
      </Route>
      <Route path="/practice">
        <Region>
          <Practice />
        </Region>
      </Route>
      <Route path="/:code?">{({ code }) => <StudentRegion codeInAddress={code ?? null} />}</Route>
      <Route>
        <Region>
          <Nowhere />
        </Region>
      </Route>
    </Switch>
  )
}

function StudentRegion({ codeInAddress }: { codeInAddress: string | null }) {
  const bench = (
    <Region>
      <Bench />
    </Region>
  )
  return (
    <Region>
      <ComeIn codeInAddress={codeInAddress} whenSeated={bench} />
    </Region>
  )
}

function Region({ children }: { children: ReactNode }) {
  const { t } = useTranslation()
  return (
    <FaultBoundary>
      <Suspense fallback={<Waiting words={t('common:loading')} />}>{children}</Suspense>
    </FaultBoundary>
  )
}
