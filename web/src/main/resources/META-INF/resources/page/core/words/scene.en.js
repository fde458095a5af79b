/** Words of the scene. */
export default {
    "scene.label": "The drive in three dimensions",
    "scene.keys": "Arrow keys turn the view, with Shift they move it, plus and minus zoom, Page Down and Page Up go from part to part, Escape lets go, Home brings the first view back.",
    "scene.wait": "The drive is being drawn …",
    "scene.none": "This browser cannot draw in three dimensions (no WebGL 2). Everything else works: the circuit, the graphs and the words tell the same.",
    "scene.lost": "The graphics of this device gave up for a moment; the picture comes back by itself.",
    "scene.this": "The drive",
    "scene.sound": "The same, sound",
    "scene.fast": "Too fast to follow by eye: slow down. Drawn as a haze.",
    "scene.gaps": "Drawn larger than they are: oil films ×{0}, piston gaps ×{1}.",
    "scene.trouble": "The computation stopped.",
    "scene.arm": "Control arm",
    "scene.sign.return": "Return spring: {0} % of its speed left; wire by the 4th root of it.",
    "scene.sign.returnBroken": "Return spring broken: nothing brings the plate back.",
    "scene.sign.tight": "Tight differential: {0} of drag, {1} of heat now; its bearings redden with that.",
    "scene.sign.thin": "Oil: {0} % of its viscosity, narrow gaps leak ×{1} (at equal pressure). Ring: leaks now.",
};
