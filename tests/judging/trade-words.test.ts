import { boltStrength, elasticConstants, meanExpansion, nutFactor } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { wordsMeant } from '../../src/judging/trade-words.js';
import { refusal } from '../quantities/refusal.js';

const metals = ['aluminium alloy', 'steel', 'grey iron', 'bronze', 'white metal', 'brass'];
const shells = ['tin babbitt', 'lead babbitt', 'copper-lead', 'tin bronze', 'lead bronze'];
const grades = ['SAE 5', 'SAE 5.2', 'SAE 8', 'ISO 5.8', 'ISO 8.8', 'ISO 9.8', 'ISO 10.9'];
const pistons = ['cast piston alloy', 'forged piston alloy'];

describe('words that were most likely meant', () => {
  it.each<[string, readonly string[], readonly string[]]>([
    ['cast iron', metals, ['grey iron']],
    ['gray iron', metals, ['grey iron']],
    ['Iron', metals, ['grey iron']],
    ['aluminum', metals, ['aluminium alloy']],
    ['Aluminium', metals, ['aluminium alloy']],
    ['mild steel', metals, ['steel']],
    ['stele', metals, ['steel']],
    ['babbitt', metals, ['white metal']],
    ['babbitt', shells, ['tin babbitt', 'lead babbitt']],
    ['white metal', shells, ['tin babbitt', 'lead babbitt']],
    ['copper lead', shells, ['copper-lead']],
    ['piston alloy', pistons, pistons],
    ['grade 5', grades, ['SAE 5']],
    ['Grade 8', grades, ['SAE 8']],
    ['sae5', grades, ['SAE 5']],
    ['8.8', grades, ['ISO 8.8']],
    ['property class 10.9', grades, ['ISO 10.9']],
    ['oil', ['dry', 'oiled', 'waxed'], ['oiled']],
  ])('by %s of %j: %j', (word, words, meant) => {
    expect(wordsMeant(word, words)).toEqual(meant);
  });

  it.each<[unknown, readonly string[]]>([
    // Stainless steel expands half as much again as steel: to ask whether steel was meant would mislead.
    ['stainless steel', metals],
    ['aluminium bronze', metals],
    ['copper', metals],
    // No such grade: a near one is another bolt.
    ['grade 6', grades],
    ['SAE 9', grades],
    ['ISO 8.9', grades],
    ['', grades],
    ['grade', grades],
    ['__proto__', metals],
    ['constructor', metals],
    ['x'.repeat(1000), metals],
    [5, grades],
    [undefined, metals],
  ])('by %s of %j: none', (word, words) => {
    expect(wordsMeant(word, words)).toEqual([]);
  });

  it.each([
    [() => meanExpansion('cast iron' as 'steel'), 'material', '"grey iron"'],
    [() => meanExpansion('aluminum' as 'steel'), 'material', '"aluminium alloy"'],
    [() => elasticConstants('cast iron' as 'steel'), 'metal', '"grey iron"'],
    [
      () => boltStrength({ grade: 'grade 5' as 'SAE 5', diameter: 0.01 as never }),
      'grade',
      '"SAE 5"',
    ],
    [() => nutFactor('oil' as 'dry'), 'condition', '"oiled"'],
  ])('are asked for in a refusal: %s', (call, parameter, meant) => {
    const { parameter: named, hint } = refusal(call);
    expect(named).toBe(parameter);
    expect(hint).toMatch(new RegExp(`^Did you mean ${meant}\\? One of: `));
  });
});
