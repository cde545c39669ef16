/** The part of `pg` that is used; the package brings no types of its own. */
declare module 'pg' {
  interface Answer {
    readonly rows: Record<string, unknown>[];
    readonly rowCount: number | null;
  }
  class Client {
    constructor(options: {
      readonly connectionString: string;
      readonly application_name?: string;
      readonly connectionTimeoutMillis?: number;
    });
    readonly user: string | undefined;
    readonly host: string;
    readonly port: number;
    readonly database: string | undefined;
    connect(): Promise<void>;
    query(sql: string, values?: readonly unknown[]): Promise<Answer>;
    on(event: 'error', heard: (error: Error) => void): this;
    end(): Promise<void>;
  }
  const pg: { readonly Client: typeof Client };

  export { Client };
  export default pg;
}
