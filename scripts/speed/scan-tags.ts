/** One opening tag of a page. */
export interface Tag {
  readonly name: string;
  /** Attributes that have a value, entities left as they are. */
  readonly values: ReadonlyMap<string, string>;
}

const tags = /<!--[\s\S]*?-->|<([a-z][a-z0-9-]*)((?:"[^"]*"|'[^']*'|[^'">])*)>/gi;
const attributes = /([a-z][^\s=>"'/]*)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;

/** The opening tags of a page that this generator wrote, in order. */
export function scanTags(html: string): Tag[] {
  return [...html.matchAll(tags)].flatMap(([, name, written = '']) =>
    name === undefined
      ? []
      : {
          name: name.toLowerCase(),
          values: new Map(
            [...written.matchAll(attributes)].map(([, key = '', double, single, bare]) => [
              key.toLowerCase(),
              double ?? single ?? bare ?? '',
            ]),
          ),
        },
  );
}
