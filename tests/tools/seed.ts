// One seed for all property tests, so that a run can be repeated and a busy machine brings no surprise;
// FC_SEED=random, or a number, looks elsewhere.

import fc from 'fast-check'

const { FC_SEED = '20260917' } = process.env
if (FC_SEED !== 'random') fc.configureGlobal({ seed: Number(FC_SEED) })
