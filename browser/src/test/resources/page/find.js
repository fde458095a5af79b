// A case written as numbers (see CaseNumbers.java) in; probabilities of causes in the order of their keys out.
export const caseOf = (diagnosis, input) => {
    let at = 0;
    const next = () => input[at++];
    const list = (count) => Array.from({ length: count }, next);
    const seed = next();
    const count = next();
    const values = new Float64Array(list(count));
    const spreads = new Float64Array(list(count));
    const origins = list(count).map((place) => ["given", "fitted", "typical"][place]);
    let machine = diagnosis.machine("machine", values, spreads, origins);
    const kinds = diagnosis.readingKinds().keys();
    const conditions = diagnosis.conditions().keys();
    const looks = diagnosis.looks();
    for (let readings = next(); readings > 0; readings--) {
        const kind = kinds[next()];
        const [value, error] = list(2);
        const keys = list(next()).map((place) => conditions[place]);
        machine = machine.reading(kind, kind, value, error, keys, new Float64Array(list(keys.length)));
    }
    for (let seen = next(); seen > 0; seen--) machine = machine.seen(looks[next()]);
    for (let notSeen = next(); notSeen > 0; notSeen--) machine = machine.notSeen(looks[next()]);
    return { machine, seed };
};

export default (diagnosis, input) => {
    const { machine, seed } = caseOf(diagnosis, input);
    const finding = machine.find(seed);
    const probabilities = finding.probabilities();
    const causes = finding.causes().map((cause, place) => [cause, probabilities[place]]);
    causes.sort(([a], [b]) => (a < b ? -1 : 1));
    return new Float64Array(causes.map(([, probability]) => probability));
};
