import type { ReactNode } from 'react';
import { chooseSystem, chooseTheme, usePreferences } from './preferences.ts';
import { useMedia } from './media.ts';

interface HeaderProps {
  /** The question of the page, as its main heading. */
  readonly children: ReactNode;
  /** What can be done with the page. */
  readonly actions?: ReactNode;
}

/** The strip above the sheet: name, question, switches. */
export function Header({ children, actions }: HeaderProps) {
  return (
    <header className="strip">
      <a className="strip-name" href="#">
        Hitchwright
      </a>
      <div className="strip-question">{children}</div>
      <div className="strip-actions">
        <UnitsSwitch />
        {actions}
        <ThemeSwitch />
      </div>
    </header>
  );
}

function UnitsSwitch() {
  const { system } = usePreferences();
  const isMetric = system === 'metric';
  return (
    <button type="button" className="quiet units" onClick={() => chooseSystem(isMetric ? 'us' : 'metric')}>
      <span className="unseen">Units: </span>
      <span>
        <b>{isMetric ? 'mm' : 'in'}</b> {isMetric ? '(in)' : '(mm)'}
      </span>
      <span className="unseen">. Switch to {isMetric ? 'inches' : 'millimetres'} first</span>
    </button>
  );
}

function ThemeSwitch() {
  const { theme } = usePreferences();
  const deviceIsDark = useMedia('(prefers-color-scheme: dark)');
  const isDark = theme === null ? deviceIsDark : theme === 'dark';
  const other = isDark ? 'Paper' : 'Blueprint';
  return (
    <button
      type="button"
      className="quiet theme"
      aria-label={other}
      onClick={() => chooseTheme(isDark ? 'light' : 'dark')}
    >
      <span className="theme-word">{other}</span>
      <svg className="theme-sign" viewBox="0 0 20 20" aria-hidden="true">
        <rect x="2" y="3" width="16" height="14" fill="none" stroke="currentColor" strokeWidth="1.6" />
        <path d="M18 3v14H2z" fill="currentColor" />
      </svg>
    </button>
  );
}
