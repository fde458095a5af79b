// The light rider's numbers, as one module tells them to another.
import { open } from "/physics/physics.js";

const { physics } = await open();
export const rider = physics.lightRider();
