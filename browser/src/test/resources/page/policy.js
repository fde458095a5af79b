// Which form of the physics a worker under a strict policy gets.
export default () =>
    new Promise((resolve, reject) => {
        const worker = new Worker("/strict.js", { type: "module" });
        worker.onmessage = ({ data }) => resolve(data);
        worker.onerror = (failure) => reject(new Error(failure.message));
    });
