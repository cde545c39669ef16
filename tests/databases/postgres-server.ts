import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { join } from 'node:path';

const ROOT = '/usr/lib/postgresql';

/** The newest server that the system's packages brought; undefined where there is none. */
function binaries(): string | undefined {
  if (!existsSync(ROOT)) return undefined;
  const versions = readdirSync(ROOT).sort((a, b) => Number(b) - Number(a));
  return versions.map(v => join(ROOT, v, 'bin')).find(bin => existsSync(join(bin, 'initdb')));
}

export const hasPostgres = binaries() !== undefined && (process.getuid?.() !== 0 || idOf('postgres') !== undefined);

/** A real server of its own in a temporary folder, reached by a socket there. */
export function startPostgres() {
  const bin = binaries()!;
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-pg-'));
  const data = join(folder, 'data');
  // The server refuses to run for root.
  const user = userInfo().username === 'root' ? 'postgres' : userInfo().username;
  const id = user === userInfo().username ? undefined : idOf(user);
  if (id) chownSync(folder, id.uid, id.gid);
  chmodSync(folder, 0o755);
  const run = (program: string, ...args: string[]) => {
    const { status, stdout, stderr } = spawnSync(join(bin, program), args, {
      encoding: 'utf8',
      cwd: folder,
      env: { PATH: process.env.PATH, LC_ALL: 'C.UTF-8' },
      ...(id ?? {}),
    });
    if (status !== 0) throw new Error(`${program}: ${stdout}${stderr}`);
    return stdout;
  };
  run('initdb', '-D', data, '-U', user, '--auth=trust', '--no-sync', '-E', 'UTF8', '--locale=C.UTF-8');
  const settings = `-c listen_addresses='' -c unix_socket_directories='${folder}' -c fsync=off -c max_connections=20`;
  run('pg_ctl', '-D', data, '-w', '-l', join(folder, 'log'), '-o', settings, 'start');
  return {
    folder,
    user,
    address: (database: string, as = user) =>
      `postgres://${as}@localhost/${database}?host=${encodeURIComponent(folder)}`,
    run,
    sql: (database: string, text: string) =>
      run('psql', '-X', '-q', '-v', 'ON_ERROR_STOP=1', '-h', folder, '-U', user, '-d', database, '-At', '-c', text),
    dump: (database: string) => {
      const text = run('pg_dump', '-h', folder, '-U', user, '--schema-only', database);
      // Newer servers guard dumps by words that are drawn each time.
      return text.replace(/^\\(?:un)?restrict .*$/gm, '');
    },
    stop: () => {
      run('pg_ctl', '-D', data, '-m', 'immediate', 'stop');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export type PostgresServer = ReturnType<typeof startPostgres>;

function idOf(user: string): { uid: number; gid: number } | undefined {
  const [uid, gid] = ['-u', '-g'].map(what => spawnSync('id', [what, user], { encoding: 'utf8' }));
  return uid?.status === 0 ? { uid: Number(uid.stdout), gid: Number(gid!.stdout) } : undefined;
}
