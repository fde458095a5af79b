/** Wörter der Ansicht. */
export default {
    "scene.label": "Der Fahrantrieb dreidimensional",
    "scene.keys": "Pfeiltasten drehen die Ansicht, mit Umschalttaste verschieben sie, Plus und Minus vergrößern und verkleinern, Bild ab und Bild auf gehen von Teil zu Teil, Escape lässt los, Pos1 bringt die erste Ansicht zurück.",
    "scene.wait": "Der Antrieb wird gezeichnet …",
    "scene.none": "Dieser Browser kann nicht dreidimensional zeichnen (kein WebGL 2). Alles andere geht: Schaltplan, Kurven und Worte sagen dasselbe.",
    "scene.lost": "Die Grafik dieses Geräts hat kurz ausgesetzt; das Bild kommt von selbst wieder.",
    "scene.this": "Der Antrieb",
    "scene.sound": "Derselbe, gesund",
    "scene.fast": "Zu schnell für das Auge: langsamer stellen. Als Schleier gezeichnet.",
    "scene.gaps": "Größer gezeichnet, als sie sind: Ölfilme ×{0}, Kolbenspiel ×{1}.",
    "scene.trouble": "Die Rechnung blieb stehen.",
    "scene.arm": "Stellhebel",
    "scene.sign.return": "Rückstellfeder: noch {0} % der Geschwindigkeit; Draht nach deren 4. Wurzel.",
    "scene.sign.returnBroken": "Rückstellfeder gebrochen: Nichts bringt die Schrägscheibe zurück.",
    "scene.sign.tight": "Differential schwergängig: {0}, jetzt {1} Wärme; danach röten sich die Lager.",
    "scene.sign.thin": "Öl: {0} % der Zähigkeit, enge Spalte lecken ×{1} (bei gleichem Druck). Ring: leckt jetzt.",
};
