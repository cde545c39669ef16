// One test file for all: each file is run apart, and would read both editions and load the language library anew.
import './edition.cases.ts';
import './sssom.cases.ts';
import './xkos.cases.ts';
import './data-package.cases.ts';
import './changes.cases.ts';
import './briefing.cases.ts';
import './plurals.cases.ts';
