import fc from 'fast-check';

/** Properties run on one seed, so that a red run can be run again; PROPERTY_SEED tries another. */
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 20261202) });
