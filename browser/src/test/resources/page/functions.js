// What is really there: one line "interface member" for each function of a module and of what it hands over.
const functions = (thing) =>
    Object.getOwnPropertyNames(thing).filter((name) => name !== "constructor" && typeof thing[name] === "function");

export function listed(entrance, module, things) {
    // The compiler also exports the classes of what is handed over; they cannot be built from outside.
    const lines = functions(module)
        .filter((name) => !name.startsWith("Page"))
        .map((name) => `${entrance} ${name}`);
    for (const [type, thing] of Object.entries(things)) {
        lines.push(...functions(Object.getPrototypeOf(thing)).map((name) => `${type} ${name}`));
    }
    return lines.join("\n");
}
