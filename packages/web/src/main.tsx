import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import { App } from './app/App.tsx';
import { keepSite } from './app/offline/offline.ts';
import { OfflineNotices } from './app/offline/OfflineNotices.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('invariant: index.html has no #root');
createRoot(root).render(
  <StrictMode>
    <OfflineNotices />
    <App />
  </StrictMode>,
);
keepSite();
