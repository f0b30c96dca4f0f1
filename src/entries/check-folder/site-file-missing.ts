import { problemOf } from '../problems/make-problem.ts';
import type { FolderCheck } from './folder-check.ts';

export const siteFileMissing: FolderCheck = {
  code: 'site-file-missing',
  scope: 'site',
  check: ({ there }) =>
    there.files.has('site.md')
      ? []
      : [
          problemOf('site.md', 'site-file-missing', {
            message:
              'The content folder has no site.md, so the site has no title: write one with `format: 1` and a `title`.',
            accepted: 'a file site.md in the content folder',
            suggestion: '---\nformat: 1\ntitle: Our challenge\n---\n',
          }),
        ],
};
