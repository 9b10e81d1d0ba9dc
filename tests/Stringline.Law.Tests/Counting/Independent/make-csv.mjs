// Remakes the two CSV files beside this script from date-holidays 3.37.0, a general-purpose calendar library.
//   npm install --no-save date-holidays@3.37.0 && node make-csv.mjs && rm -r node_modules
// The test project never runs this; it reads the committed files.
import { readFileSync, writeFileSync } from 'node:fs';
import Holidays from 'date-holidays';

const version = JSON.parse(readFileSync(new URL('./node_modules/date-holidays/package.json', import.meta.url))).version;
if (version !== '3.37.0') throw new Error(`made for date-holidays 3.37.0, found ${version}`);

const header = (what, articles) => `# ${what}
# Made by make-csv.mjs from npm date-holidays ${version} (code ISC, copyright 2015-present commenthol).
# Its data, and so this file, is under CC BY-SA 3.0 (http://creativecommons.org/licenses/by-sa/3.0/);
# attribution as the package gives it: ${articles}
# Used as an outside check in tests only; no part of the product.
`;

const days = (calendar, year) => calendar.getHolidays(year).filter(day => day.type === 'public');
const row = (...cells) => cells.map(cell => cell.replaceAll(',', ' ')).join(',') + '\n';
const write = (name, text) => writeFileSync(new URL(name, import.meta.url), text);

const california = new Holidays('US', 'CA');
let text = header('Public holidays of US-CA, 2024 to 2035, days of observance included.',
  'https://en.wikipedia.org/wiki/Public_holidays_in_the_United_States') + 'day,name\n';
for (let year = 2024; year <= 2035; year++)
  for (const day of days(california, year))
    if (day.date.startsWith(`${year}-`)) text += row(day.date.slice(0, 10), day.name);
write('us-ca-holidays.csv', text);

text = header('First day of the Chinese year in Singapore, 2023 to 2035; Diwali by its local names, 2026 to 2035, in countries that keep it.',
  'https://en.wikipedia.org/wiki/Public_holidays_in_Mauritius, https://en.wikipedia.org/wiki/Public_holidays_in_Singapore, https://en.wikipedia.org/wiki/Public_holidays_in_Trinidad_and_Tobago, https://en.wikipedia.org/wiki/Suriname#National_holidays') + 'holiday,country,day\n';
const singapore = new Holidays('SG');
for (let year = 2023; year <= 2035; year++) {
  const first = days(singapore, year).find(day => day.name === 'Chinese New Year');
  text += row('lunar-new-year', 'SG', first.date.slice(0, 10));
}
for (const country of ['MU', 'SR', 'TT']) {
  const calendar = new Holidays(country);
  for (let year = 2026; year <= 2035; year++) {
    const day = days(calendar, year).find(day => ['Divali', 'Deepavali'].includes(day.name) && !day.substitute);
    if (day) text += row('diwali', country, day.date.slice(0, 10));
  }
}
write('moon-days.csv', text);
