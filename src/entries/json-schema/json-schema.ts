/** A value of JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** A JSON Schema of draft 2020-12 (json-schema.org): keywords with their values. */
export type JsonSchema = { readonly [keyword: string]: Json };
