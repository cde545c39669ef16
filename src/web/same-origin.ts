import type { Request } from 'express';

/**
 * Whether a form came from a page of this very viewer. `Sec-Fetch-Site` is what the browser itself says; where it is
 * missing (plain http on another address than loopback) `Origin` has to name the host that was asked. SameSite cookies
 * alone are not enough: another server on another port of this machine is the same site. Neither header: refused. Before
 * a proxy that speaks https the page's origin is https, while the proxy itself asks over http.
 */
export function isSameOrigin({ headers }: Pick<Request, 'headers'>): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin') return false;
  const { origin, host } = headers;
  // A form of a page that sends no referrer has the origin `null`, whoever made it; then the browser's word decides.
  if (origin !== undefined && origin !== 'null') {
    return ['http', 'https'].some(scheme => origin.toLowerCase() === `${scheme}://${host?.toLowerCase()}`);
  }
  return site === 'same-origin';
}
