// A worker whose own policy forbids building functions from text.
import { open } from "/physics/physics.js";

const { physics, target, reason } = await open();
postMessage(`${target}: ${physics.lightRider().name()}: ${reason}`);
