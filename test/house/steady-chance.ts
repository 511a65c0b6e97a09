import fc from 'fast-check';

// The same cases in every run, so that a red test is red for everyone; the fuzz runs roam freely.
fc.configureGlobal({ seed: Number(process.env.BOARDCURE_TEST_SEED ?? 20_260_504) });
