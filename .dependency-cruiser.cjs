// The layers of the house: a folder of core may import only what its row lists. Shells look at core, never at each other.
const core = '^packages/core/src/';
const layers = ['units', 'tables', 'records', 'engine', 'words', 'drawings', 'exchange', 'contract', 'handover'];
const mayUse = {
  units: [],
  tables: ['units'],
  records: ['units', 'tables'],
  engine: ['units', 'tables', 'records'],
  words: ['units', 'tables', 'records', 'engine'],
  drawings: ['units', 'tables', 'records', 'engine', 'words'],
  exchange: ['units', 'tables', 'records', 'engine'],
  contract: ['units', 'tables', 'records', 'engine', 'words'],
  handover: ['units', 'tables', 'records', 'engine', 'words', 'drawings', 'exchange', 'contract'],
};
const production = { pathNot: '\\.test\\.ts$' };
const layerRules = layers.map((layer) => ({
  name: `core-layer-${layer}`,
  severity: 'error',
  from: { path: `${core}${layer}/`, ...production },
  to: { path: `${core}(?!(${[layer, ...mayUse[layer]].join('|')})/)` },
}));

/** Inside engine, imports run one way too: tools ← inputs ← findings ← joint ← topics ← assess, which calls them all; shaft and balance hang on the lift, and advice asks assess. */
const engineLayers = [
  'geometry',
  'formula',
  'linkage',
  'proof',
  'inputs',
  'findings',
  'joint',
  'hookup',
  'lift',
  'shaft',
  'balance',
  'power',
  'assess',
  'pinplan',
  'advice',
  'readings',
];
const engineMayUse = {
  geometry: [],
  formula: ['geometry'],
  linkage: ['formula'],
  proof: ['geometry'],
  inputs: ['geometry', 'proof'],
  findings: ['geometry', 'proof', 'inputs'],
  joint: ['geometry', 'proof', 'inputs', 'findings'],
  hookup: ['geometry', 'proof', 'inputs', 'findings', 'joint'],
  lift: ['geometry', 'formula', 'linkage', 'proof', 'inputs', 'findings', 'joint'],
  shaft: ['geometry', 'formula', 'linkage', 'proof', 'inputs', 'findings', 'joint', 'lift'],
  balance: ['geometry', 'formula', 'linkage', 'proof', 'inputs', 'findings', 'joint', 'lift'],
  power: ['geometry', 'proof', 'inputs', 'findings', 'joint'],
  assess: ['geometry', 'proof', 'inputs', 'findings', 'joint', 'hookup', 'lift', 'shaft', 'balance', 'power'],
  pinplan: ['geometry', 'proof', 'inputs', 'findings', 'joint', 'assess'],
  advice: ['geometry', 'proof', 'inputs', 'findings', 'assess'],
  readings: ['geometry', 'inputs', 'advice'],
};
const engineRules = engineLayers.map((layer) => ({
  name: `engine-layer-${layer}`,
  severity: 'error',
  from: { path: `${core}engine/${layer}/`, ...production },
  to: { path: `${core}engine/(?!(${[layer, ...engineMayUse[layer]].join('|')})/)` },
}));

module.exports = {
  forbidden: [
    ...layerRules,
    ...engineRules,
    {
      name: 'core-is-pure',
      comment: 'core runs anywhere: no Node, no packages but the schema library, the compressor and the code writer',
      severity: 'error',
      from: { path: core, ...production },
      to: {
        dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'],
        pathNot: 'node_modules/(zod|fflate|uqr)/',
      },
    },
    {
      name: 'schema-library-at-the-border-only',
      severity: 'error',
      from: { path: core, pathNot: `${core}(records|contract)/` },
      to: { path: 'node_modules/zod/' },
    },
    {
      name: 'compressor-in-exchange-only',
      severity: 'error',
      from: { path: core, pathNot: `${core}exchange/` },
      to: { path: 'node_modules/fflate/' },
    },
    {
      name: 'core-no-shell',
      severity: 'error',
      from: { path: core },
      to: { path: '^packages/(cli|web|store|server|print)/' },
    },
    {
      name: 'cli-alone',
      severity: 'error',
      from: { path: '^packages/cli/' },
      to: { path: '^packages/(web|store|server)/' },
    },
    {
      name: 'web-alone',
      severity: 'error',
      from: { path: '^packages/web/' },
      to: { path: '^packages/(cli|store|server/src/(?!client\\.ts$))' },
    },
    {
      name: 'store-below-server',
      severity: 'error',
      from: { path: '^packages/store/' },
      to: { path: '^packages/(cli|web|server|print)/' },
    },
    {
      name: 'server-over-store',
      severity: 'error',
      from: { path: '^packages/server/' },
      to: { path: '^packages/(cli|web)/' },
    },
    {
      name: 'print-over-core',
      severity: 'error',
      from: { path: '^packages/print/' },
      to: { path: '^packages/(cli|web|store|server)/' },
    },
    {
      name: 'front-door',
      comment: 'other packages enter a core folder by its index.ts',
      severity: 'error',
      from: { path: '^packages/(cli|web|store|server|print)/' },
      to: { path: `${core}.+/(?!index\\.ts)[^/]+$` },
    },
    {
      name: 'folder-door',
      comment: 'a folder of core is entered by its index.ts, by its own engine neighbours too',
      severity: 'error',
      from: { path: `${core}([^/]+)/`, ...production },
      to: { path: `${core}(?!$1/)[^/]+/(?!index\\.ts|[^/]+/index\\.ts)`, pathNot: `${core}$1/` },
    },
    {
      name: 'no-circular',
      severity: 'error',
      from: { path: '^packages/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    { name: 'no-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(/dist/|\\.d\\.ts$)' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
    },
  },
};
