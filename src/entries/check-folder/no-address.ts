import { problemOf } from '../problems/make-problem.ts';
import type { FolderCheck } from './folder-check.ts';

/** Links begin with the path of the address: below `/duration/` every one of them misses without it. */
export const noAddress: FolderCheck = {
  code: 'no-address',
  scope: 'site',
  check: ({ site }) =>
    site === null || site.value.address !== null
      ? []
      : [
          problemOf('site.md', 'no-address', {
            message:
              '`address` is missing: links are made for a site at the top of its host, and the feed and the pictures for shared links go by none. Once you know where the site is published, write it down with its path.',
            accepted: 'the web address of the site, such as https://fenside.example/long-haul/',
            suggestion: 'address: https://fenside.example/long-haul/',
          }),
        ],
};
