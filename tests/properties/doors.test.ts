import * as core from '@truesweep/core';
import * as drawings from '@truesweep/drawings';
import * as svg from '@truesweep/drawings/svg';
import * as explain from '@truesweep/explain';
import * as history from '@truesweep/history';
import * as jobs from '@truesweep/jobs';
import * as jobsNode from '@truesweep/jobs/node';
import * as recordings from '@truesweep/recordings';
import * as report from '@truesweep/report';
import * as wording from '@truesweep/wording';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';
import {
  change,
  changed,
  columnsOf,
  frozen,
  functionsIn,
  noText,
  ownError,
  placesIn,
  wrongNumber,
  wrongText,
} from './doors/changes.js';
import { coreRecipes } from './doors/coreRecipes.js';
import { explainRecipes } from './doors/explainRecipes.js';
import {
  drawingsRecipes,
  historyRecipes,
  jobsNodeRecipes,
  jobsRecipes,
  recordingsRecipes,
  reportRecipes,
  svgRecipes,
} from './doors/packageRecipes.js';
import type { Recipes } from './doors/recipe.js';
import { wordingRecipes } from './doors/wordingRecipes.js';

const doors: readonly (readonly [name: string, module: object, recipes: Recipes, cases: number])[] =
  [
    ['core', core, coreRecipes, 20_000],
    ['recordings', recordings, recordingsRecipes, 2000],
    ['jobs', jobs, jobsRecipes, 4000],
    ['jobs/node', jobsNode, jobsNodeRecipes, 300],
    ['history', history, historyRecipes, 1000],
    ['report', report, reportRecipes, 1000],
    ['drawings', drawings, drawingsRecipes, 1500],
    ['drawings/svg', svg, svgRecipes, 1000],
    ['explain', explain, explainRecipes, 3000],
    ['wording', wording, wordingRecipes, 10_000],
  ];

/** A refusal is an answer too: nothing is written where a folder is a file. */
const refusal = (error: unknown) => {
  if (!core.isInputError(error)) throw error;
  return error.code;
};

describe.each(doors)('%s', (_, module, recipes, cases) => {
  const functions = new Map(functionsIn(module));

  test('every function has a recipe here, and every recipe a function', () => {
    expect(Object.keys(recipes).sort()).toEqual([...functions.keys()].sort());
  });

  const each = Object.entries(recipes);
  const total = each.reduce((sum, [, { weight = 1 }]) => sum + weight, 0);

  test.each(each)('%s answers its recipe, whatever list its columns are', async (name, recipe) => {
    const call = recipe.call ?? functions.get(name)!;
    const answer = await Promise.resolve(call(...(recipe.args() as never[]))).catch(refusal);
    expect(wrongNumber(answer, Number.isNaN) ?? wrongText(answer)).toBeUndefined();
    for (const path of placesIn(recipe.args())) {
      const args = changed(recipe.args(), path, { kind: 'list', as: 'plain' });
      if (args) expect(await call(...(args as never[])), path.join('.')).toEqual(answer);
    }
  });

  test.each(each)('%s refuses what is wrong, and never answers with it', async (name, recipe) => {
    const { weight = 1, infinite, open, unknown = open } = recipe;
    const call = recipe.call ?? functions.get(name)!;
    const places = placesIn(recipe.args());
    const isWrong = infinite ? Number.isNaN : (value: number) => !Number.isFinite(value);
    await fc.assert(
      fc.asyncProperty(fc.nat(), change, async (place, what) => {
        const path = places[place % places.length];
        const args = path ? changed(recipe.args(), path, what) : recipe.args();
        if (!args) return;
        const before = columnsOf(args);
        let answer: unknown;
        try {
          answer = await call(...(frozen(args) as never[]));
        } catch (error) {
          expect(columnsOf(args)).toEqual(before);
          if (!core.isInputError(error)) throw error;
          if (what.kind === 'getter' && error.code === 'unreadable') {
            expect(error.cause).toBe(ownError);
          }
          if (open) return;
          expect(error.path).not.toBe('');
          expect(error.message).toMatch(/\.$/);
          expect(error.message).not.toMatch(/undefined|\[object/);
          return;
        }
        expect(columnsOf(args)).toEqual(before);
        if (what.kind === 'unknown' && path && !unknown) {
          expect.fail(`${path.join('.')}.${what.name} was taken`);
        }
        const ofTexts = module === wording && answer !== undefined;
        const wrong =
          wrongNumber(answer, isWrong) ?? wrongText(answer) ?? (ofTexts && noText(answer));
        if (wrong) expect.fail(wrong);
      }),
      { numRuns: Math.ceil(((cases * weight) / total) * soak) },
    );
  });
});
