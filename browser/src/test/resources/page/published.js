// Answers to the rows of the book that the test has written beside the proof module, in their order.
export default async (proof) => {
    const rows = (await import("/proof/book.js")).rows;
    return new Float64Array(rows.map(({ theme, id, names, texts }) => proof.answer(theme, id, names, texts)));
};
