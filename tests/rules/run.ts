import { writeFileSync } from 'node:fs';
import { ruleTables } from './rule-tables.ts';
import { RULES_PAGE, writeRulesPage } from './rules-page.ts';

/** Writes the page of rules. */
writeFileSync(RULES_PAGE, writeRulesPage(ruleTables));
