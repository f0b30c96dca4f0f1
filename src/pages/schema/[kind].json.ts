import type { APIRoute, GetStaticPaths } from 'astro';
import { schemaAddress } from '../../components/schema/schema-address.ts';
import { schemaOfFile } from '../../entries/json-schema/schema-of-file.ts';
import { type FileKind, fileKinds } from '../../entries/schema/file-kinds.ts';

export const getStaticPaths = (() =>
  fileKinds.map((kind) => ({ params: { kind: kind.kind }, props: { kind } }))) satisfies GetStaticPaths;

export const GET: APIRoute<{ kind: FileKind }> = ({ props: { kind }, site }) =>
  new Response(`${JSON.stringify(schemaOfFile(kind, schemaAddress(kind.kind, site)), null, 1)}\n`, {
    headers: { 'content-type': 'application/schema+json; charset=utf-8' },
  });
