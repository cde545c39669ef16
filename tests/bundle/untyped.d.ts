/** Judges that come without types; what the tests ask of them. */
declare module 'js-yaml' {
  export function load(text: string): unknown;
}
declare module 'jsonld' {
  export interface Quad {
    readonly subject: { readonly value: string };
    readonly predicate: { readonly value: string };
    readonly object: { readonly value: string };
  }
  const jsonld: { toRDF(document: object, options: object): Promise<Quad[]> };
  export default jsonld;
}
