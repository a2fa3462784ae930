import { browserPath } from './browser.ts';
import { serveSite } from './site.ts';

/** Unpacks the browser and serves the built site once for the whole run. */
export default async function globalSetup(): Promise<() => void> {
  process.env['HITCHWRIGHT_CHROMIUM'] = await browserPath();
  const { server, address } = await serveSite();
  process.env['HITCHWRIGHT_SITE'] = address;
  return () => server.close();
}
