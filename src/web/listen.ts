import { createServer, type RequestListener, type Server } from 'node:http';
import { isIP } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';
import { CatalogError } from '../model/errors.ts';

/** Where a viewer listens, and under which names it may be asked for. */
export interface Address {
  readonly origin: string;
  /** What a `Host` header may say, in lower case. */
  readonly hosts: ReadonlySet<string>;
}

export interface Viewer {
  readonly address: string;
  readonly loopback: boolean;
  close(): Promise<void>;
}

export interface Wanted {
  readonly port: number;
  readonly host: string;
  /** Under which others reach it, through a proxy that speaks https and passes `Host` on; absent: as it listens. */
  readonly address?: string;
}

/** Listens on one address and hands over what it is. Throws BadArgument where the port is taken or not allowed. */
export async function listen(wanted: Wanted, app: (address: Address) => RequestListener): Promise<Viewer> {
  const outside = wanted.address === undefined ? undefined : outsideAddress(wanted.address);
  const server = createServer();
  await started(server, wanted);
  const { port } = server.address() as { port: number };
  const loopback = isLoopback(wanted.host);
  const origin = `http://${inAddress(/^(0\.0\.0\.0|::)$/.test(wanted.host) ? 'localhost' : wanted.host)}:${port}`;
  const hosts = hostsFor(wanted.host, port, loopback);
  if (outside) hosts.add(outside.host);
  server.on('request', app({ origin: outside?.origin ?? origin, hosts }));
  return {
    address: `${origin}/`,
    loopback,
    close: () =>
      new Promise(resolve => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function outsideAddress(text: string): URL {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url && /^https?:$/.test(url.protocol) && `${url.origin}/` === url.href) return url;
  throw new CatalogError(
    'BadArgument',
    `${text} is no address of a viewer; write it with its scheme and without a path: https://catalog.example`,
    { address: text },
  );
}

/**
 * Only these names: a page of a stranger whose domain is made to point at 127.0.0.1 (DNS rebinding) reaches the port,
 * but its browser still says the stranger's name in `Host`.
 */
function hostsFor(host: string, port: number, loopback: boolean): Set<string> {
  const names = new Set(['localhost', '127.0.0.1', '[::1]', inAddress(host.toLowerCase())]);
  if (!loopback) {
    names.add(hostname().toLowerCase());
    for (const addresses of Object.values(networkInterfaces())) {
      for (const { address } of addresses ?? []) names.add(inAddress(address.toLowerCase()));
    }
  }
  return new Set([...names].flatMap(name => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`])));
}

const inAddress = (host: string) => (isIP(host) === 6 ? `[${host}]` : host);

const isLoopback = (host: string) => host === 'localhost' || host === '::1' || /^127(\.\d{1,3}){3}$/.test(host);

function started(server: Server, { port, host }: { readonly port: number; readonly host: string }): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const why: Record<string, string> = {
        EADDRINUSE: `Port ${port} is in use`,
        EACCES: `Port ${port} may not be used by you`,
        EADDRNOTAVAIL: `${host} is no address of this machine`,
        ENOTFOUND: `${host} is no address of this machine`,
      };
      const known = why[error.code ?? ''];
      const next = /no address/.test(known ?? '')
        ? 'leave --host out'
        : 'choose another with --port N, or any free one with --port 0';
      reject(known ? new CatalogError('BadArgument', `${known}; ${next}.`, { port, host }) : error);
    });
    server.listen(port, host, resolve);
  });
}
