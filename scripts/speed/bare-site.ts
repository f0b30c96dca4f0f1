import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { projectFolder } from '../folders/project-folder.ts';

/**
 * Builds the same entries as a site of one layout and one content collection, with nothing of this project but its way
 * with Markdown: what a plain site of these pages would take. Arguments: content folder, a folder for the site's own files.
 */
export async function main([content = '', folder = '']: string[]): Promise<number> {
  await mkdir(join(folder, 'src/pages'), { recursive: true });
  await symlink(join(projectFolder, 'node_modules'), join(folder, 'node_modules'));
  await writeFile(join(folder, 'package.json'), '{ "type": "module" }\n');
  await writeFile(join(folder, 'src/content.config.ts'), collectionText(content));
  await writeFile(join(folder, 'src/pages/[...id].astro'), pageText);
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.NODE_ENV = 'production';
  process.chdir(folder);
  const { build } = await import('astro');
  await build({ root: folder, configFile: false, logLevel: 'error', build: { concurrency: 8 } });
  return 0;
}

function collectionText(content: string): string {
  return `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
const entries = defineCollection({
  loader: glob({ pattern: '*/entry.md', base: ${JSON.stringify(join(content, 'entries/measured'))} }),
});
export const collections = { entries };
`;
}

const pageText = `---
import { getCollection } from 'astro:content';
import { renderMarkdown } from ${JSON.stringify(join(projectFolder, 'src/entries/markdown.ts'))};
export async function getStaticPaths() {
  return (await getCollection('entries')).map((entry) => ({ params: { id: entry.id }, props: { entry } }));
}
const { entry } = Astro.props;
const html = renderMarkdown(entry.body);
---
<html lang="en">
  <head><meta charset="utf-8" /><title>{entry.data.name}</title></head>
  <body>
    <h1>{entry.data.name}</h1>
    <table>{Object.entries(entry.data.wing).map(([key, value]) => <tr><th>{key}</th><td>{String(value)}</td></tr>)}</table>
    <ul>{entry.data.flights.map((flight) => <li>{flight.number}: {String(flight.date)} {flight.changed}</li>)}</ul>
    <div set:html={html} />
  </body>
</html>
`;
