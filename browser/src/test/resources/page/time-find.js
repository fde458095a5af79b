// Rounds and a case written as numbers in; seconds of each whole answer out: found, every reading ranked, what cannot be told apart.
import { caseOf } from "/find.js";

export default (diagnosis, [rounds, ...input]) => {
    const { machine, seed } = caseOf(diagnosis, input);
    const seconds = [];
    for (let round = 0; round < rounds; round++) {
        const begun = performance.now();
        machine.find(seed);
        seconds.push((performance.now() - begun) / 1000);
    }
    return new Float64Array(seconds);
};
