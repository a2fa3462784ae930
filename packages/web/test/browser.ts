import { existsSync } from 'node:fs';

/** Switches for a browser inside a container, that asks nothing of the network. */
export const browserSwitches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-quic',
  '--no-first-run',
];

/** Path of a Chromium: the packaged one, unpacked with the libraries that it brings, or the system's own. */
export async function browserPath(): Promise<string> {
  process.env['AWS_EXECUTION_ENV'] = 'AWS_Lambda_nodejs20.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  try {
    return await chromium.executablePath();
  } catch (problem) {
    if (existsSync('/usr/bin/chromium')) return '/usr/bin/chromium';
    throw problem;
  }
}
