import { listed } from "/functions.js";
import { rider } from "/rider.js";

export default (diagnosis) => {
    const machine = diagnosis.machine(rider.name(), rider.values(), rider.spreads(), rider.origins());
    return listed("Diagnosis", diagnosis, { Case: machine, Finding: machine.findQuickly(1) });
};
