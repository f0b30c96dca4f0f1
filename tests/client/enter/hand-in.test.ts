import { describe, expect, it } from 'vitest';
import { mailTo, pathOfEntry, proposedFile, uploadPage } from '../../../src/client/enter/hand-in.ts';

const path = pathOfEntry('summer-2027', 'slow-lantern');
const at = (kind: 'github' | 'gitlab' | 'forgejo') =>
  ({ kind, url: 'https://forge.example/club/site/', branch: 'main' }) as const;

describe('the page on which a new file is proposed', () => {
  // The query parameters `filename` and `value`: issue 16398 and pull request 16556 of go-gitea/gitea, which tell both.
  it('has name and text filled in where the forge takes them', () => {
    expect(proposedFile(at('github'), path, 'a b\n', false)).toEqual({
      address:
        'https://forge.example/club/site/new/main?filename=content%2Fentries%2Fsummer-2027%2Fslow-lantern%2Fentry.md&value=a%20b%0A',
      filled: true,
    });
    expect(proposedFile(at('forgejo'), path, 'a b\n', false)).toEqual({
      address:
        'https://forge.example/club/site/_new/main/?filename=content%2Fentries%2Fsummer-2027%2Fslow-lantern%2Fentry.md&value=a%20b%0A',
      filled: true,
    });
  });

  // `file_name` is taken and a text is not: work item 594214 of gitlab-org/gitlab.
  it('has the name alone on a forge that takes no text', () => {
    expect(proposedFile(at('gitlab'), path, 'a b\n', false)).toEqual({
      address:
        'https://forge.example/club/site/-/new/main?file_name=content%2Fentries%2Fsummer-2027%2Fslow-lantern%2Fentry.md',
      filled: false,
    });
  });

  it('has the name alone where the text would make the address too long', () => {
    const proposal = proposedFile(at('github'), path, 'é'.repeat(1100), false);
    expect(proposal?.filled).toBe(false);
    expect(proposal?.address).not.toContain('value=');
  });

  it('is the one on which a file that is there is changed', () => {
    const tail = 'content/entries/summer-2027/slow-lantern/entry.md';
    expect(proposedFile(at('github'), path, 'a', true)?.address).toBe(
      `https://forge.example/club/site/edit/main/${tail}`,
    );
    expect(proposedFile(at('gitlab'), path, 'a', true)?.address).toBe(
      `https://forge.example/club/site/-/edit/main/${tail}`,
    );
    expect(proposedFile(at('forgejo'), path, 'a', true)?.address).toBe(
      `https://forge.example/club/site/_edit/main/${tail}`,
    );
  });

  it('is none without a repository', () => {
    expect(proposedFile(null, path, 'a', false)).toBe(null);
    expect(uploadPage(null, path)).toBe(null);
  });
});

describe('the mail to the organiser', () => {
  // RFC 6068, section 5: lines of a body end with %0D%0A.
  it('holds a short text', () => {
    expect(mailTo('entries@club.example', 'Entry: A', 'a\nb\n')).toEqual({
      address: 'mailto:entries@club.example?subject=Entry%3A%20A&body=a%0D%0Ab%0D%0A',
      filled: true,
    });
  });

  it('leaves a long one to be pasted', () => {
    expect(mailTo('entries@club.example', 'Entry: A', 'a'.repeat(2000))).toEqual({
      address: 'mailto:entries@club.example?subject=Entry%3A%20A',
      filled: false,
    });
  });
});
