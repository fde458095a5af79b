// One function of the proof module, by its place in the list, at pairs of numbers.
export default (proof, input) => {
    const count = (input.length - 1) / 2;
    return proof.values(input[0], input.slice(1, 1 + count), input.slice(1 + count));
};
