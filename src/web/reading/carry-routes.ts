import type { ServedCarry } from '../../commands/bundles/carry-page.ts';
import type { Routes } from '../routes.ts';

/**
 * Nothing may leave the page, not even to this server; its engine runs in a worker made of the page's own script. The
 * look-up box, which asks the server, is therefore left out.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  'worker-src blob:',
  "connect-src 'none'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The page on which people carry their own files over. */
export function carryRoutes({ get, show }: Routes, carry: ServedCarry): void {
  get('/carry', async asked => {
    const page = await carry.page(asked.published, '/carry/');
    asked.response.setHeader('Content-Security-Policy', POLICY);
    await show(asked, 'carry', page, 'Carry your file over');
  });
  get('/carry/data.js', async ({ published, response }) => {
    response.setHeader('Cache-Control', 'no-cache');
    response.type('js').send(await carry.data(published));
  });
  for (const [name, file] of carry.files) {
    get(`/carry/${name}`, async ({ response }) => response.sendFile(file, { maxAge: '1h' }));
  }
}
