import { describe, expect, it } from 'vitest';
import { figureDefinition, figureDefinitions } from '../../src/figures/registry.ts';
import { kindOfFigure, kindOfUnit } from '../../src/figures/unit-kind.ts';

describe('the registry', () => {
  it('has each id once, in lower case joined by hyphens', () => {
    const ids = figureDefinitions.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('finds a figure by its id, and none by another word', () => {
    expect(figureDefinition('wing-loading')?.unit).toBe('N/m2');
    expect(figureDefinition('toString')).toBeUndefined();
  });

  it('knows how people write each figure', () => {
    expect(kindOfUnit('N/m2')).toBe('loading');
    expect(kindOfUnit('1')).toBe('number');
    expect(kindOfFigure(figureDefinition('rubber-share')!)).toBe('share');
    expect(kindOfFigure(figureDefinition('aspect-ratio')!)).toBe('number');
  });
});
