/** Catches what went wrong in one region, so that the rest of the page goes on, and offers to load again. */

import { Component, type ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from './button.tsx'
import styles from './fault-boundary.module.css'

export class FaultBoundary extends Component<{ children: ReactNode }, { faulty: boolean }> {
  override state = { faulty: false }

  static getDerivedStateFromError() {
    return { faulty: true }
  }

  override render() {
    return this.state.faulty ? <FaultWords /> : this.props.children
  }
}

function FaultWords() {
  const { t } = useTranslation()
  return (
    <section className={styles.fault} role="alert">
      <h2>{t('common:fault.title')}</h2>
      <p>{t('common:fault.sentence')}</p>
      <Button icon="again" onClick={() => window.location.reload()}>
        {t('common:reload')}
      </Button>
    </section>
  )
}
