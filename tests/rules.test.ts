import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rulesMet, ruleTables } from './rules/rule-tables.ts';
import { RULES_PAGE, writeRulesPage } from './rules/rules-page.ts';

describe.each(ruleTables)('$title', (table) => {
  test('each rule has a name of its own', () => {
    const names = table.rules.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test.each(table.rules.map((rule) => [rule.name, rule] as const))(
    '%s',
    (name, { example, counterExample }) => {
      const met = rulesMet(table, example);
      expect([...met.names], `the rule is the first to apply to "${example}"`).toContain(name);
      expect(met.result).toBe(example);
      const other = rulesMet(table, counterExample);
      expect([...other.names], `the rule does not apply to "${counterExample}"`).not.toContain(name);
      expect(other.result).toBe(counterExample);
    },
  );
});

test('the page of rules is the same as the output of npm run rules', () => {
  expect(readFileSync(RULES_PAGE, 'utf8')).toBe(writeRulesPage(ruleTables));
});
