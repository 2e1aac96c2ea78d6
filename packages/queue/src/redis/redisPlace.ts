/** Where Redis is, and who one is there. */
export interface RedisPlace {
  /** Its host's name or address; `127.0.0.1` when left out. */
  readonly host?: string;
  /** The number of its port, from 1 to 65535; 6379 when left out. */
  readonly port?: number;
  /** The number of the database, whole, 0 or more; 0 when left out. */
  readonly database?: number;
  /** Who one is there; the default user when left out. */
  readonly user?: string;
  /** The password; none when left out. It is told in no error. */
  readonly password?: string;
  /** Left out where the connection is not encrypted. With it Redis must show a certificate of one of these authorities. */
  readonly tls?: {
    /** Certificates of the authorities that are trusted, as PEM; those that Node trusts when left out. */
    readonly ca?: string;
  };
}

/**
 * A place as it is named in sentences, without who one is.
 *
 * @example
 * redisLabel({ user: 'bench', password: 'unguessed', tls: {} }) // => 'rediss://127.0.0.1:6379'
 */
export function redisLabel({ host = '127.0.0.1', port = 6379, database, tls }: RedisPlace): string {
  const name = host.includes(':') ? `[${host}]` : host;
  return `${tls ? 'rediss' : 'redis'}://${name}:${port}${database ? `/${database}` : ''}`;
}
