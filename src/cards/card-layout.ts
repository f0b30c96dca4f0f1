import type { Card, CardRow } from './card.ts';
import { familyOf } from './card-fonts.ts';
import { cardSize } from './card-picture.ts';
import { planSize } from './plan-picture.ts';

/** A box of the layout, as the drawing library takes it. */
export interface Box {
  readonly type: 'div' | 'img';
  readonly props: Readonly<Record<string, unknown>>;
}

type Style = Readonly<Record<string, string | number>>;

/** Paper and inks of the site in its light scheme; styles/tokens.css names the same ones. */
const colours = { paper: '#fbfaf5', ink: '#1d1c19', soft: '#5a564c', line: '#dcd7c9' } as const;
const edge = 60;
/** Letters from which on a title is set smaller, so that two lines of it leave room for the places. */
const longTitle = 27;

/** The layout of a card. A text that is too long ends in three dots. */
export function cardLayout(card: Card, mark: string): Box {
  return box(
    {
      width: cardSize.width,
      height: cardSize.height,
      padding: `${edge - 10}px ${edge}px ${edge - 16}px`,
      flexDirection: 'column',
      backgroundColor: colours.paper,
      color: colours.ink,
      fontFamily: familyOf('Text'),
      fontSize: 30,
    },
    [
      box({ alignItems: 'center', height: 48, color: colours.soft, gap: 18 }, [
        { type: 'img', props: { src: mark, width: 48, height: 48 } },
        box({ ...line, width: 900 }, card.site.text),
      ]),
      box(
        {
          fontFamily: familyOf('Display'),
          fontWeight: 600,
          fontSize: card.title.text.length > longTitle ? 48 : 72,
          lineHeight: 1.1,
          marginTop: 18,
          width: cardSize.width - 2 * edge,
          display: 'block',
          lineClamp: 2,
          wordBreak: 'break-word',
        },
        card.title.text,
      ),
      box({ flexDirection: 'column', marginTop: 10, color: colours.soft, fontSize: 28 }, [
        box(line, card.state),
        ...(card.target === null
          ? []
          : [box({ ...line, width: cardSize.width - 2 * edge }, card.target.text)]),
      ]),
      box({ flexGrow: 1 }, []),
      box({ width: '100%', alignItems: 'flex-end', gap: 44 }, [
        box(
          {
            flexDirection: 'column',
            flexGrow: 1,
            flexBasis: 0,
            minWidth: 0,
            borderTop: `4px solid ${card.accent}`,
          },
          [
            ...card.rows.map(rowLayout),
            ...(card.nobody === null
              ? []
              : [
                  box(
                    { paddingTop: 24, height: 236, fontSize: 34, lineHeight: 1.3, maxWidth: 760 },
                    card.nobody,
                  ),
                ]),
          ],
        ),
        ...(card.plan === null ? [] : [planLayout(card.plan)]),
      ]),
    ],
  );
}

function rowLayout(row: CardRow): Box {
  const builders = row.builders.map(({ text }) => text).join(', ');
  const below = row.note === null ? builders : `${row.note} · ${builders}`;
  return box(
    { width: '100%', alignItems: 'center', height: 84, borderBottom: `1px solid ${colours.line}`, gap: 24 },
    [
      box({ fontFamily: familyOf('Display'), fontSize: 40, width: 44 }, String(row.place)),
      box({ flexDirection: 'column', flexGrow: 1, flexBasis: 0, minWidth: 0 }, [
        box(
          { ...line, fontFamily: familyOf('Display'), fontWeight: 600, fontSize: 34, lineHeight: 1.15 },
          row.aircraft.text,
        ),
        box({ ...line, fontSize: 24, lineHeight: 1.2, color: colours.soft }, below),
      ]),
      box({ fontSize: 40, fontWeight: 600, whiteSpace: 'nowrap' }, row.score),
    ],
  );
}

function planLayout({ svg, name }: NonNullable<Card['plan']>): Box {
  return box({ flexDirection: 'column', alignItems: 'center', width: planSize.width }, [
    { type: 'img', props: { src: pictureSource(svg), ...planSize } },
    box({ ...line, width: 'auto', maxWidth: planSize.width, fontSize: 24, color: colours.soft }, name.text),
  ]);
}

const line: Style = {
  display: 'block',
  whiteSpace: 'nowrap',
  overflow: 'hidden',
  textOverflow: 'ellipsis',
  width: '100%',
};

function box(style: Style, children: readonly Box[] | string): Box {
  return { type: 'div', props: { style: { display: 'flex', boxSizing: 'border-box', ...style }, children } };
}

/** An SVG as the source of a picture. */
export function pictureSource(svg: string): string {
  return `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`;
}
