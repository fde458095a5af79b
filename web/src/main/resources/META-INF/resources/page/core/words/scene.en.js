/** Words of the scene. */
export default {
    "scene.label": "The drive in three dimensions",
    "scene.keys": "Arrow keys turn the view, with Shift they move it, plus and minus zoom, Page Down and Page Up go from part to part, Escape lets go, Home brings the first view back.",
    "scene.wait": "The drive is being drawn …",
    "scene.none": "This browser cannot draw in three dimensions (no WebGL 2). Everything else works: the circuit, the graphs and the words tell the same.",
    "scene.lost": "The graphics of this device gave up for a moment; the picture comes back by itself.",
    "scene.this": "The drive",
    "scene.sound": "The same, sound",
    "scene.notes": "How it is drawn",
    "scene.fast": "Too fast to follow by eye: slow down. Drawn as a haze.",
    "scene.gaps": "Drawn larger than they are: oil films ×{0}, piston gaps ×{1}.",
    "scene.trouble": "The computation stopped.",
    "scene.arm": "Control arm",
    "scene.sign.return": "Return spring: brings the plate back at {0} % of its speed; its wire is drawn thinner.",
    "scene.sign.returnBroken": "Return spring broken: nothing brings the plate back.",
    "scene.sign.tight": "Tight differential: {0} of drag, {1} of heat now; its bearings redden with the heat.",
    "scene.sign.thin": "Oil at {0} % of its viscosity: at the same pressure narrow gaps leak ×{1}. Rings show where it leaks now.",
};
